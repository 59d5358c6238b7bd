package trialwood.house;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import trialwood.evidence.DueWork;
import trialwood.evidence.WorkSource;
import trialwood.house.HouseSprays.Closed;
import trialwood.web.Measures;

/** A house asks for no work; while it is closed to people, nothing can be done in it. */
@Component
class HouseWork implements WorkSource {

  private final HouseLog log;
  private final Measures measures;

  HouseWork(HouseLog log, Measures measures) {
    this.log = log;
    this.measures = measures;
  }

  @Override
  public List<DueWork> due(LocalDate today) {
    return List.of();
  }

  @Override
  public Map<String, String> closedPlaces(LocalDate today) {
    return log.closed().stream()
        .collect(
            Collectors.toMap(
                Closed::house,
                house ->
                    "nobody in before %s, after a spray"
                        .formatted(measures.moment(house.until()))));
  }
}
