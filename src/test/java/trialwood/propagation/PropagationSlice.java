package trialwood.propagation;

import org.springframework.context.annotation.ComponentScan;
import org.springframework.context.annotation.ComponentScan.Filter;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.FilterType;
import org.springframework.context.annotation.Import;
import trialwood.candidate.CandidateMarks;

/** The services of the bench, without pages. */
@Configuration(proxyBeanMethods = false)
@ComponentScan(
    basePackages = {"trialwood.propagation", "trialwood.unit"},
    excludeFilters = @Filter(type = FilterType.REGEX, pattern = ".*(Test|Slice|\\.web\\..*)"))
@Import(CandidateMarks.class)
class PropagationSlice {}
