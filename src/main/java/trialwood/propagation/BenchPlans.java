package trialwood.propagation;

import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** The bench plans of all runs. */
public interface BenchPlans extends JpaRepository<BenchPlan, UUID> {}
