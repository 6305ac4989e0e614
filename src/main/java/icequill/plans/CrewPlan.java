package icequill.plans;

import icequill.document.MinutesFrom;
import icequill.planner.Timetable;
import icequill.pricer.VisitPlan;
import java.util.Optional;

/**
 * A visit with its crew, and where its minutes come from.
 *
 * @param timetable by which the minutes were found; empty where they come from elsewhere
 */
record CrewPlan(VisitPlan plan, MinutesFrom from, Optional<Timetable> timetable) {}
