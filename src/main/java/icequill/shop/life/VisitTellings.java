package icequill.shop.life;

import icequill.ledger.Reading;
import icequill.ledger.entries.LifeStep;
import icequill.ledger.store.DamagedRow;
import icequill.life.telling.Telling;
import icequill.life.telling.Tellings;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What customers were told of visits of the book. */
public final class VisitTellings {

    private static final String KIND = "VISIT";
    private static final String TOLD = "TOLD";
    private static final String CAME_BACK = "CAME_BACK";
    private static final String MAIL = "mail";
    private static final String WAY = "way";
    private static final String BEGINS = "begins";
    private static final String ENDS = "ends";

    private VisitTellings() {
    }

    /** Those of a visit, by id. */
    public static Tellings of(Reading open, String visit) {
        List<Telling> all = new ArrayList<>();
        open.entries().steps(KIND, visit).forEach(step -> {
            if (step.event().equals(CAME_BACK)) {
                all.replaceAll(telling -> telling.mail().equals(step.text(MAIL)) ? telling.returned() : telling);
            } else {
                all.add(telling(step));
            }
        });
        return new Tellings(all);
    }

    private static Telling telling(LifeStep step) {
        return DamagedRow.made(TOLD, () -> new Telling(step.dated(),
                Telling.Way.valueOf(step.text(WAY).orElseThrow()),
                LocalDateTime.parse(step.text(BEGINS).orElseThrow()),
                LocalDateTime.parse(step.text(ENDS).orElseThrow()), step.text(MAIL), false));
    }

    /** One more, as a step of a visit. */
    public static LifeStep next(Reading open, String visit, Optional<String> site, Telling telling) {
        Map<String, String> said = new HashMap<>(Map.of(WAY, telling.way().name(), BEGINS,
                telling.begins().toString(), ENDS, telling.ends().toString()));
        telling.mail().ifPresent(mail -> said.put(MAIL, mail));
        return step(open, visit, site, TOLD, telling.day(), said);
    }

    /** That a mail came back by which somebody was told of a visit. */
    public static LifeStep cameBack(Reading open, String visit, Optional<String> site, String mail, LocalDate day) {
        return step(open, visit, site, CAME_BACK, day, Map.of(MAIL, mail));
    }

    private static LifeStep step(Reading open, String visit, Optional<String> site, String event, LocalDate day,
            Map<String, String> said) {
        return new LifeStep(KIND, visit, open.entries().steps(KIND, visit).size() + 1, event, day, site, said,
                Map.of());
    }
}
