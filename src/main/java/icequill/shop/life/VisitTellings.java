package icequill.shop.life;

import icequill.ledger.Reading;
import icequill.ledger.entries.LifeStep;
import icequill.ledger.store.DamagedRow;
import icequill.life.telling.Telling;
import icequill.life.telling.Tellings;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.Optional;

/** What customers were told of visits of the book. */
public final class VisitTellings {

    private static final String KIND = "VISIT";
    private static final String TOLD = "TOLD";
    private static final String WAY = "way";
    private static final String BEGINS = "begins";
    private static final String ENDS = "ends";

    private VisitTellings() {
    }

    /** Those of a visit, by id. */
    public static Tellings of(Reading open, String visit) {
        return new Tellings(open.entries().steps(KIND, visit).stream().map(VisitTellings::telling).toList());
    }

    private static Telling telling(LifeStep step) {
        return DamagedRow.made(TOLD, () -> new Telling(step.dated(),
                Telling.Way.valueOf(step.text(WAY).orElseThrow()),
                LocalDateTime.parse(step.text(BEGINS).orElseThrow()),
                LocalDateTime.parse(step.text(ENDS).orElseThrow())));
    }

    /**
     * One more.
     *
     * @param before what was told of it until then
     */
    public static LifeStep next(String visit, String site, Tellings before, Telling telling) {
        return new LifeStep(KIND, visit, before.all().size() + 1, TOLD, telling.day(), Optional.of(site),
                Map.of(WAY, telling.way().name(), BEGINS, telling.begins().toString(), ENDS,
                        telling.ends().toString()),
                Map.of());
    }
}
