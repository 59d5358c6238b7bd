package trialwood.house;

import java.time.Clock;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import trialwood.house.HouseSprays.Closed;
import trialwood.record.Checked;
import trialwood.record.Recorder;
import trialwood.record.Refused;
import trialwood.web.Instead;

/** Writes the log of the houses, and knows which of them nobody may go into. */
@Service
public class HouseLog {

  private final HouseSprays sprays;
  private final HouseReadings readings;
  private final Recorder recorder;
  private final Clock clock;

  HouseLog(HouseSprays sprays, HouseReadings readings, Recorder recorder, Clock clock) {
    this.sprays = sprays;
    this.readings = readings;
    this.recorder = recorder;
    this.clock = clock;
  }

  /** Houses closed to people at this moment. */
  public List<Closed> closed() {
    return sprays.closedAt(clock.instant());
  }

  /**
   * @param instead the entry that it corrects, if it does
   * @throws Refused when it is impossible, or the entry was corrected before
   */
  @Transactional
  public HouseSpray spray(
      House house,
      NewSpray said,
      @Nullable Checked checked,
      @Nullable Instead instead,
      @Nullable UUID personId) {
    UUID houseId = Objects.requireNonNull(house.id());
    HouseSpray spray = new HouseSpray(houseId, said, checked, recorder.by(personId));
    if (instead != null) {
      refuseUnless(
          sprays.findById(instead.earlier()).filter(s -> s.houseId().equals(houseId)).isPresent(),
          sprays.existsBySupersedesId(instead.earlier()));
      spray.insteadOf(instead.earlier(), instead.reason());
    }
    return sprays.save(spray);
  }

  /**
   * @param instead the entry that it corrects, if it does
   * @throws Refused when it is impossible, or the entry was corrected before
   */
  @Transactional
  public HouseReading reading(
      House house,
      NewReading said,
      @Nullable Checked checked,
      @Nullable Instead instead,
      @Nullable UUID personId) {
    HouseReading reading = new HouseReading(house, said, checked, recorder.by(personId));
    if (instead != null) {
      refuseUnless(
          readings
              .findById(instead.earlier())
              .filter(r -> r.houseId().equals(reading.houseId()))
              .isPresent(),
          readings.existsBySupersedesId(instead.earlier()));
      reading.insteadOf(instead.earlier(), instead.reason());
    }
    return readings.save(reading);
  }

  private static void refuseUnless(boolean there, boolean corrected) {
    if (!there) {
      throw new Refused("corrects", "There is no such entry.");
    }
    if (corrected) {
      throw new Refused("corrects", "This entry was corrected before. Open the log afresh.");
    }
  }
}
