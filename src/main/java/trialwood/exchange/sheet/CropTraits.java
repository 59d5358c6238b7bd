package trialwood.exchange.sheet;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import trialwood.crop.Trait;
import trialwood.exchange.Column;
import trialwood.exchange.Row;
import trialwood.record.CodeKey;

/** The traits on record, found by crop and code: two crops may use one code for two things. */
final class CropTraits {

  private record Key(@Nullable UUID cropId, String codeKey) {}

  private final Map<Key, Trait> byCode;

  CropTraits(List<Trait> all) {
    byCode =
        all.stream()
            .collect(
                Collectors.toMap(
                    trait -> new Key(trait.cropId(), CodeKey.of(trait.code())),
                    Function.identity()));
  }

  /**
   * @throws trialwood.record.Refused when the crop has no such trait
   */
  Trait find(@Nullable UUID cropId, Row row, Column<String> column) {
    return find(cropId, row.the(column), row, column);
  }

  private Trait find(@Nullable UUID cropId, String code, Row row, Column<?> column) {
    Trait trait = byCode.get(new Key(cropId, CodeKey.of(code)));
    if (trait == null) {
      throw row.refused(column, "The crop has no trait %s.".formatted(code));
    }
    return trait;
  }

  UUID id(UUID cropId, Row row, Column<String> column) {
    return Objects.requireNonNull(find(cropId, row, column).id());
  }

  /** The traits whose codes stand in one cell. */
  Set<UUID> ids(@Nullable UUID cropId, Row row, Column<List<String>> column) {
    return row.orElse(column, List.of()).stream()
        .map(code -> Objects.requireNonNull(find(cropId, code, row, column).id()))
        .collect(Collectors.toUnmodifiableSet());
  }
}
