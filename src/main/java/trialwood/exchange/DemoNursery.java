package trialwood.exchange;

import java.io.IOException;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.context.annotation.Profile;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.ResourcePatternResolver;
import org.springframework.stereotype.Component;
import trialwood.crop.Crops;

/** Fills an empty record with the demo nursery, through the import that everybody uses. */
@Component
@Profile("demo")
class DemoNursery implements ApplicationRunner {

  private static final Logger log = LoggerFactory.getLogger(DemoNursery.class);

  private final Import imports;
  private final Sheets sheets;
  private final Crops crops;
  private final ResourcePatternResolver resources;

  DemoNursery(Import imports, Sheets sheets, Crops crops, ResourcePatternResolver resources) {
    this.imports = imports;
    this.sheets = sheets;
    this.crops = crops;
    this.resources = resources;
  }

  @Override
  public void run(ApplicationArguments arguments) throws IOException {
    if (crops.count() == 0) {
      load();
    }
  }

  private void load() throws IOException {
    long start = System.nanoTime();
    int rows = 0;
    for (Resource file : files()) {
      String name = Objects.requireNonNull(file.getFilename());
      rows += take(name, file.getContentAsByteArray());
    }
    log.info(
        "Demo nursery loaded: {} rows in {} ms", rows, (System.nanoTime() - start) / 1_000_000);
  }

  private List<Resource> files() throws IOException {
    return Arrays.stream(resources.getResources("classpath:demo-data/*.csv"))
        .sorted(Comparator.comparing(Resource::getFilename))
        .toList();
  }

  private int take(String name, byte[] file) {
    Sheet sheet =
        sheets.all().stream()
            .filter(one -> one.fileName().equals(name))
            .findFirst()
            .orElseThrow(() -> new IllegalStateException("No sheet takes " + name));
    ImportResult result = imports.take(sheet, name, file);
    if (!result.kept()) {
      throw new IllegalStateException(
          "%s has %d problems:%n%s"
              .formatted(
                  name,
                  result.problemCount(),
                  result.problems().stream()
                      .map(ImportProblem::toString)
                      .collect(Collectors.joining(System.lineSeparator()))));
    }
    return result.rows();
  }
}
