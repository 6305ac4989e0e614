package icequill.render.view;

import icequill.document.WorkSheet;
import icequill.explain.ConstantKey;
import icequill.render.words.Sentences;
import icequill.work.Caution;
import icequill.work.Reading;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** What is to be on board before anybody drives off: what the work uses up, what measures it, what keeps people safe. */
record LoadView(WorkSheet sheet, Sentences sentences) {

    private static final Set<Caution> EQUIPMENT = Set.of(Caution.GLOVES_AND_EYES, Caution.ACID_GLOVES, Caution.LOCK_OUT,
            Caution.CHEMICALS_INSIDE, Caution.STAY_WITH_TIMER, Caution.SHARP_FINS, Caution.NYLON_BRUSH_ONLY,
            Caution.LADDER);
    private static final Set<Reading> INSTRUMENTS = Set.of(Reading.ICE_WEIGHT, Reading.AIR_OFF_CONDENSER,
            Reading.WATER_PRESSURE, Reading.PH, Reading.STRIP);

    List<String> items() {
        return Stream.of(materials(), instruments(), equipment()).flatMap(all -> all).toList();
    }

    private Stream<String> materials() {
        return sheet.load().stream().map(load -> Sentences.capitalized(load.name()) + ", "
                + sentences.quantity(load.quantity()));
    }

    private Stream<String> instruments() {
        return sheet.jobs().stream().flatMap(job -> job.steps().stream())
                .flatMap(step -> step.procedure().readings().stream()).filter(INSTRUMENTS::contains).distinct().sorted()
                .map(reading -> sentences.word("load." + ConstantKey.of(reading)));
    }

    private Stream<String> equipment() {
        return sheet.cautions().stream().filter(EQUIPMENT::contains).sorted()
                .map(caution -> sentences.word("load." + ConstantKey.of(caution)));
    }
}
