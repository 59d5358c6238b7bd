package trialwood.unit;

/** What a unit is. */
public enum UnitKind {
  POSITION,
  TRAY,
  LOT,
  PLANT,
  PLOT,
  STOCK
}
