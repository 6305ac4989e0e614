package icequill.office;

import icequill.document.MinutesFrom;
import icequill.pricer.VisitPlan;

/** A visit with its crew, and where its minutes come from. */
record CrewPlan(VisitPlan plan, MinutesFrom from) {}
