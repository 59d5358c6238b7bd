package trialwood.label;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.util.UUID;
import org.hibernate.annotations.UuidGenerator;
import org.hibernate.envers.Audited;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;
import trialwood.record.CodeKey;

/** A kind of label paper that the nursery has: a sheet with places, or single labels on a roll. */
@Entity
@Audited
public class LabelFormat {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  private @Nullable UUID id;

  @Version private int version;
  private String name;

  @Column(name = "paper_width_mm")
  private BigDecimal paperWidth;

  @Column(name = "paper_height_mm")
  private BigDecimal paperHeight;

  private int across;
  private int down;

  @Column(name = "left_mm")
  private BigDecimal leftEdge;

  @Column(name = "top_mm")
  private BigDecimal topEdge;

  @Column(name = "width_mm")
  private BigDecimal width;

  @Column(name = "height_mm")
  private BigDecimal height;

  @Column(name = "step_right_mm")
  private BigDecimal stepRight;

  @Column(name = "step_down_mm")
  private BigDecimal stepDown;

  /**
   * @param name as people call the paper; it stands in addresses and stays
   */
  public LabelFormat(String name, Layout layout) {
    this.name = name.strip();
    Check.that()
        .holds(!this.name.isEmpty(), "name", "Give the format a name.")
        .fits(this.name, 40, "name")
        .holds(this.name.isEmpty() || CodeKey.isPlain(this.name), "name", CodeKey.PLAIN_RULE)
        .orRefuse();
    lay(layout);
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected LabelFormat() {}

  /** Says how the labels lie. */
  public void lay(Layout layout) {
    this.paperWidth = layout.paperWidth();
    this.paperHeight = layout.paperHeight();
    this.across = layout.across();
    this.down = layout.down();
    this.leftEdge = layout.left();
    this.topEdge = layout.top();
    this.width = layout.width();
    this.height = layout.height();
    this.stepRight = layout.stepRight();
    this.stepDown = layout.stepDown();
  }

  public Layout layout() {
    return new Layout(
        paperWidth,
        paperHeight,
        across,
        down,
        leftEdge,
        topEdge,
        width,
        height,
        stepRight,
        stepDown);
  }

  public @Nullable UUID id() {
    return id;
  }

  public int version() {
    return version;
  }

  public String name() {
    return name;
  }
}
