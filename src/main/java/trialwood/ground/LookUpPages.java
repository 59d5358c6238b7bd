package trialwood.ground;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import trialwood.crop.ContainerClasses;
import trialwood.dossier.FilingRoutes;
import trialwood.web.ForStaff;

/** What is only read here: container classes, checks, filing routes. They come by import. */
@Controller
@ForStaff
class LookUpPages {

  private final ContainerClasses classes;
  private final CropCheckList checks;
  private final FilingRoutes routes;

  LookUpPages(ContainerClasses classes, CropCheckList checks, FilingRoutes routes) {
    this.classes = classes;
    this.checks = checks;
    this.routes = routes;
  }

  @GetMapping("/ground/containers")
  String containers(Model page) {
    page.addAttribute("classes", classes.findAllByOrderByHighestLitres());
    return "ground/containers";
  }

  @GetMapping("/ground/checks")
  String checks(Model page) {
    page.addAttribute("checks", checks.all());
    return "ground/checks";
  }

  @GetMapping("/ground/routes")
  String routes(Model page) {
    page.addAttribute("routes", routes.findAllByOrderByCode());
    return "ground/routes";
  }
}
