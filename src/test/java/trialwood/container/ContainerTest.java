package trialwood.container;

import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.time.ZoneOffset;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Import;
import trialwood.testing.RecordTest;
import trialwood.unit.Identity;
import trialwood.web.Measures;

/** The services of this package on a database, each test rolled back. */
@Inherited
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
@RecordTest
@Import({
  Potting.class,
  Shifting.class,
  Tending.class,
  Numbering.class,
  PotSizes.class,
  LotRecords.class,
  Holders.class,
  Measuring.class,
  Identity.class,
  LotEvidence.class,
  PlantEvidence.class,
  GradeEvidence.class,
  WinterEvidence.class,
  LotAnswers.class,
  PlantAnswers.class,
  ContainerEvidence.class,
  ContainerLife.class,
  ContainerWork.class,
  CoverWork.class,
  Nursery.class,
  ContainerTest.Shown.class
})
@interface ContainerTest {

  @TestConfiguration(proxyBeanMethods = false)
  class Shown {

    @Bean
    Measures measures() {
      return new Measures(ZoneOffset.UTC);
    }
  }
}
