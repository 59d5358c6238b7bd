package trialwood.container;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import trialwood.crop.ContainerClass;
import trialwood.crop.ContainerClasses;
import trialwood.record.Refused;

/** Classes of pots, and whether one holds more than another. */
@Component
class PotSizes {

  private final ContainerClasses classes;

  PotSizes(ContainerClasses classes) {
    this.classes = classes;
  }

  /** The class that was chosen. */
  ContainerClass of(UUID id) {
    return classes
        .findById(id)
        .orElseThrow(() -> new Refused("class", "Choose a container class."));
  }

  /** A shift goes into pots that are larger by their true volume, or else by their class. */
  void refuseUnlessLarger(Lot smaller, Lot larger) {
    ContainerClass from = of(smaller.containerClassId());
    ContainerClass to = of(larger.containerClassId());
    boolean grows =
        !from.equals(to)
            && bigger(smaller.litres(), larger.litres())
                .or(() -> bigger(from.highestLitres(), to.highestLitres()))
                .orElse(true);
    if (!grows) {
      throw new Refused(
          "class",
          "A shift goes into larger pots; these go from %s to %s."
              .formatted(named(from, smaller.litres()), named(to, larger.litres())));
    }
  }

  private static Optional<Boolean> bigger(@Nullable BigDecimal from, @Nullable BigDecimal to) {
    return from == null || to == null ? Optional.empty() : Optional.of(to.compareTo(from) > 0);
  }

  private static String named(ContainerClass containerClass, @Nullable BigDecimal litres) {
    return litres == null
        ? containerClass.code()
        : "%s (%s l)".formatted(containerClass.code(), litres.stripTrailingZeros().toPlainString());
  }
}
