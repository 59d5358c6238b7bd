package trialwood.web;

import org.springframework.context.annotation.Configuration;
import org.springframework.http.CacheControl;
import org.springframework.web.servlet.config.annotation.ResourceHandlerRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/**
 * The script that answers for us while there is no signal. It stands at the root, since it may
 * answer only for what is below it, and a browser asks for it anew each time.
 */
@Configuration(proxyBeanMethods = false)
class DeviceScript implements WebMvcConfigurer {

  static final String ADDRESS = "/sw.js";

  @Override
  public void addResourceHandlers(ResourceHandlerRegistry files) {
    files
        .addResourceHandler(ADDRESS)
        .addResourceLocations("classpath:/static/")
        .setCacheControl(CacheControl.noCache());
  }
}
