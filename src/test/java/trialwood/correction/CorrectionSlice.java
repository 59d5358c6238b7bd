package trialwood.correction;

import org.springframework.context.annotation.ComponentScan;
import org.springframework.context.annotation.ComponentScan.Filter;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.FilterType;
import org.springframework.context.annotation.Import;
import trialwood.candidate.CandidateMarks;

/** What puts labels right, with a bench to stick on, without pages. */
@Configuration(proxyBeanMethods = false)
@ComponentScan(
    basePackages = {"trialwood.correction", "trialwood.propagation", "trialwood.unit"},
    excludeFilters =
        @Filter(type = FilterType.REGEX, pattern = ".*(Test|Slice|Pages?|\\.web\\..*)"))
@Import(CandidateMarks.class)
class CorrectionSlice {}
