package trialwood;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.modulith.core.ApplicationModules;

class ArchitectureTest {

  @Test
  void packages_lean_only_on_those_they_name() {
    ApplicationModules.of(Trialwood.class).verify();
  }

  @Test
  void the_arithmetic_knows_neither_the_web_nor_the_database() {
    noClasses()
        .that()
        .resideInAPackage("trialwood.analysis..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "org.springframework..",
            "jakarta..",
            "org.hibernate..",
            "java.sql..",
            "trialwood.record..")
        .allowEmptyShould(true)
        .check(
            new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("trialwood"));
  }

  /** A stream that nobody closes keeps its connection, and ten of them stop the nursery. */
  @Test
  void what_a_query_finds_is_taken_as_a_list() {
    noClasses()
        .should()
        .callMethod(JdbcClient.MappedQuerySpec.class, "stream")
        .check(
            new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("trialwood"));
  }
}
