package icequill.outlook;

import icequill.forecast.fit.Fit;
import icequill.forecast.fit.Side;
import icequill.forecast.fit.StopSeason;
import icequill.party.SiteKind;
import java.util.Optional;

/**
 * A fit of one side's clock.
 *
 * @param kind of the sites; empty for all
 * @param season of the stops, which is looked for at all sites together; empty at one kind
 */
public record SideFit(Side side, Optional<SiteKind> kind, Fit fit, Optional<StopSeason> season) {}
