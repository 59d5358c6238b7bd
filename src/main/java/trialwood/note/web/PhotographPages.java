package trialwood.note.web;

import java.time.Duration;
import java.util.UUID;
import java.util.function.Function;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import trialwood.note.Photograph;
import trialwood.note.Photographs;
import trialwood.web.ForStaff;
import trialwood.web.NotFound;

/** The photographs themselves; they never change, so a browser may keep them. */
@Controller
class PhotographPages {

  private static final CacheControl KEPT =
      CacheControl.maxAge(Duration.ofDays(30)).cachePrivate().immutable();

  private final Photographs photographs;

  PhotographPages(Photographs photographs) {
    this.photographs = photographs;
  }

  @GetMapping("/photographs/{id}")
  @ForStaff
  ResponseEntity<byte[]> picture(@PathVariable UUID id) {
    return answer(id, Photograph::picture);
  }

  @GetMapping("/photographs/{id}/small")
  @ForStaff
  ResponseEntity<byte[]> small(@PathVariable UUID id) {
    return answer(id, Photograph::small);
  }

  private ResponseEntity<byte[]> answer(UUID id, Function<Photograph, byte[]> size) {
    Photograph photograph = photographs.findById(id).orElseThrow(NotFound.of("such photograph"));
    return ResponseEntity.ok()
        .contentType(MediaType.IMAGE_JPEG)
        .cacheControl(KEPT)
        .body(size.apply(photograph));
  }
}
