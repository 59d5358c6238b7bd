package trialwood.exchange.web;

import java.nio.charset.StandardCharsets;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;

/** A file of comma-separated values that the browser puts away instead of showing it. */
final class CsvAnswer {

  private static final MediaType CSV = new MediaType("text", "csv", StandardCharsets.UTF_8);

  private CsvAnswer() {}

  static ResponseEntity<byte[]> of(String name, byte[] file) {
    ContentDisposition attached = ContentDisposition.attachment().filename(name).build();
    return ResponseEntity.ok()
        .contentType(CSV)
        .header(HttpHeaders.CONTENT_DISPOSITION, attached.toString())
        .body(file);
  }
}
