package icequill.work;

import static icequill.work.Caution.*;
import static icequill.work.SafetyPaper.*;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What can hurt somebody at an ice machine, and what each paper says of it: the one table of hazards. {@link Hazards} finds which
 * of them a piece of work has.
 */
public enum Hazard {
    /** Any cleaner or sanitizer. */
    CHEMICAL(true, says(WORK_SHEET, LABEL_FIRST, GLOVES_AND_EYES)),
    /** Burns skin and eyes (29 CFR 1910.133, 1910.138, 1910.151(c)). */
    ACID(false, says(WORK_SHEET, LABEL_FIRST, ACID_GLOVES)),
    /** Chlorine with what it must not meet. */
    POISONOUS_GAS(true, says(WORK_SHEET, NEVER_ACID_WITH_CHLORINE)),
    /** A machine that circulates a chemical while nobody is at it. */
    CHEMICAL_LEFT_ALONE(false, says(WORK_SHEET, CHEMICALS_INSIDE)),
    /** Acid that stays too long eats the plating, which then flakes into the ice. */
    CHEMICAL_LEFT_TOO_LONG(false, says(WORK_SHEET, STAY_WITH_TIMER)),
    /** Sanitizer that stays in what people eat (40 CFR 180.940). */
    RESIDUE(true, says(WORK_SHEET, SANITIZER_AT_LABEL_STRENGTH, BLEACH_BY_STRENGTH)),
    SPOILED_ICE(true, says(WORK_SHEET, DISCARD_FIRST_ICE)),
    /** A machine with a plug that somebody puts back (29 CFR 1910.147(a)(2)(iii)(A)). */
    START_BY_PLUG(false, says(WORK_SHEET, UNPLUGGED), says(BRUSHING_SHEET, UNPLUGGED)),
    /** A hard-wired or remote machine that somebody switches on, or that keeps a charge (29 CFR 1910.147). */
    START_BY_SWITCH(false, says(WORK_SHEET, LOCK_OUT)),
    /** The second feed, of what stands elsewhere. */
    SECOND_FEED(false, says(WORK_SHEET, BOTH_FEEDS)),
    /** Power that comes back while hands, tools or people are in the way (29 CFR 1910.147(e)). */
    POWER_RETURNS(false, says(WORK_SHEET, CLEAR_BEFORE_POWER)),
    /** Hands where an auger or agitator turns (29 CFR 1910.147). */
    AUGER(false, says(WORK_SHEET, AUGER_STOPPED, GLOVES_AND_EYES)),
    /** Hands in a plain bin below a machine that circulates a chemical. */
    BELOW_CIRCULATION(false, says(WORK_SHEET, CURTAIN_CLOSED, GLOVES_AND_EYES)),
    /** Fins, fan and hot lines of a condenser (common practice). */
    FINS(false, says(WORK_SHEET, SHARP_FINS, NYLON_BRUSH_ONLY), says(BRUSHING_SHEET, SHARP_FINS, NYLON_BRUSH_ONLY)),
    /** Roof edge and ladder (29 CFR 1926 subparts M and X for the trade, from memory). */
    FALL(false, says(WORK_SHEET, ROOF_EDGE, LADDER)),
    /** Refrigerant that burns, or that nobody recorded. */
    FLAMMABLE_REFRIGERANT(false, says(WORK_SHEET, NO_FLAME), says(VISIT_RECORD, GAS_SUSPECTED),
            says(BRUSHING_SHEET, GAS_SUSPECTED)),
    /** The refrigerant circuit (40 CFR 82 subpart F). */
    REFRIGERANT(true, says(WORK_SHEET, CERTIFIED_REFRIGERANT), says(BRUSHING_SHEET, CERTIFIED_REFRIGERANT)),
    /** Live electrical parts (29 CFR 1910.331 to 335, from memory). */
    LIVE_PARTS(true, says(WORK_SHEET, QUALIFIED_ELECTRICAL), says(BRUSHING_SHEET, QUALIFIED_ELECTRICAL)),
    /** Water under pressure in a filter's housing (common practice). */
    WATER_PRESSURE(false, says(WORK_SHEET, LET_PRESSURE_OUT)),
    /** What a place asks for beyond all of these. */
    LOCAL_LAW(true, says(WORK_SHEET, LOCAL_RULES), says(BRUSHING_SHEET, LOCAL_RULES));

    private final boolean always;
    @SuppressWarnings("ImmutableEnumChecker") // never changed after the constructor, and handed out by its values only
    private final Map<SafetyPaper, List<Caution>> said;

    private record Row(SafetyPaper paper, List<Caution> cautions) {}

    Hazard(boolean always, Row... rows) {
        this.always = always;
        said = new EnumMap<>(SafetyPaper.class);
        Arrays.stream(rows).forEach(row -> said.put(row.paper(), row.cautions()));
    }

    private static Row says(SafetyPaper paper, Caution... cautions) {
        return new Row(paper, List.of(cautions));
    }

    /** Whether it is taken to be there whatever is done. */
    public boolean isAlways() {
        return always;
    }

    /** What a paper says of it, in order; nothing where that paper is not for those whom it can hurt. */
    public List<Caution> cautions(SafetyPaper paper) {
        return said.getOrDefault(paper, List.of());
    }

    /** All that a paper says of some hazards, each once. */
    public static Set<Caution> cautions(SafetyPaper paper, Set<Hazard> hazards) {
        Set<Caution> cautions = EnumSet.noneOf(Caution.class);
        hazards.forEach(hazard -> cautions.addAll(hazard.cautions(paper)));
        return cautions;
    }
}
