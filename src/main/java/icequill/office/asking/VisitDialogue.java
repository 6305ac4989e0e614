package icequill.office.asking;

import icequill.life.repair.RecommendedRepair;
import icequill.party.Language;
import icequill.party.Site;
import icequill.problem.Validated;
import icequill.rates.Rates;
import icequill.render.words.Sentences;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The questions about a visit in their order.
 *
 * @param today the last day on which it can have been
 * @param known who was at the site before, the last first
 * @param repairs that were recommended at the site before, and are not done
 * @param called what the call says that the visit answers, about which nobody is asked then; empty where it answers none
 * @param rates of a day
 */
public record VisitDialogue(Site site, ZoneId zone, LocalDate today, List<KnownPerson> known,
        List<RecommendedRepair> repairs, Optional<CalledVisit> called,
        Function<LocalDate, Validated<Rates>> rates, Sentences sentences) {

    public VisitDialogue {
        known = List.copyOf(known);
        repairs = List.copyOf(repairs);
    }

    /** The same of a visit that answers a call. */
    VisitDialogue answering(CalledVisit call) {
        return new VisitDialogue(site, zone, today, known, repairs, Optional.of(call), rates, sentences);
    }

    /** What is said before the first question. */
    public String greeting() {
        return sentences.word("ask.greeting", site.name());
    }

    /** What is said when somebody leaves, or when no more can be read. */
    public String left() {
        return sentences.word("ask.left");
    }

    /** What is said to who goes back before the first question. */
    public String atFirst() {
        return sentences.word("ask.first");
    }

    /** What is said once a form is written. */
    public String written(Path file) {
        return sentences.word("ask.written", file.toString());
    }

    /** In which somebody is asked. */
    public Language language() {
        return sentences.formats().language();
    }

    public Turn first() {
        return new DayQuestion(new Asking(sentences), today, rates, this::on).first();
    }

    private Turn on(LocalDate day, Rates prices) {
        Setting setting = new Setting(new Asking(sentences), site, zone, day, prices, repairs);
        PartQuestions parts = new PartQuestions(setting,
                new MoreQuestions(setting, Turn.Told::new)::first);
        MachineQuestions machines = new MachineQuestions(setting, parts::first);
        OutcomeQuestion outcome = new OutcomeQuestion(setting.asking(), machines::first);
        CallQuestions call = new CallQuestions(setting, outcome::first);
        Function<Draft, Turn> asked = called.<Function<Draft, Turn>>map(
                told -> draft -> outcome.first(draft.withAll(told.told()))).orElse(call::first);
        return new PeopleQuestions(setting, known, asked)
                .first(Draft.EMPTY.with("site", site.id()));
    }

    /**
     * What is to become of a visit that was told.
     *
     * @param priced whether it has a price
     */
    public Turn closing(TypedVisit visit, boolean priced) {
        return new ClosingQuestions(new Asking(sentences), visit.draft(), visit.id() + ".yaml").first(priced);
    }
}
