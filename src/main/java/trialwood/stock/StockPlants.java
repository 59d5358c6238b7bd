package trialwood.stock;

import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** All stock plants, living and dead. */
public interface StockPlants extends JpaRepository<StockPlant, UUID> {}
