package trialwood;

import java.util.stream.Stream;
import org.springframework.modulith.core.ApplicationModuleDetectionStrategy;
import org.springframework.modulith.core.ApplicationModuleInformation;
import org.springframework.modulith.core.JavaPackage;
import org.springframework.modulith.core.NamedInterfaces;

/**
 * Every package below the root is a module. The arithmetic is open with all its rooms, which is
 * said here because nothing of a framework may stand in it.
 */
public class ArithmeticIsOpen implements ApplicationModuleDetectionStrategy {

  @Override
  public Stream<JavaPackage> getModuleBasePackages(JavaPackage root) {
    return ApplicationModuleDetectionStrategy.directSubPackage().getModuleBasePackages(root);
  }

  @Override
  public NamedInterfaces detectNamedInterfaces(
      JavaPackage module, ApplicationModuleInformation information) {
    return module.getName().equals("trialwood.analysis")
        ? NamedInterfaces.forOpen(module)
        : ApplicationModuleDetectionStrategy.super.detectNamedInterfaces(module, information);
  }
}
