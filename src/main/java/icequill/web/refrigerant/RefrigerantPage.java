package icequill.web.refrigerant;

import icequill.answer.refrigerant.RefrigerantSheet;
import icequill.office.care.AskedPeriod;
import icequill.office.refrigerant.RefrigerantOffice;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.request.Extras;
import icequill.request.PaperOptions;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.Page;
import icequill.web.page.TypedFields;
import java.time.LocalDate;
import java.util.Optional;

/** What was added to machines and recovered from them, of a site or of all of the shop. */
public enum RefrigerantPage implements Page {
    OF_SHOP {
        @Override
        Optional<String> site(Asked asked) {
            return Optional.empty();
        }
    },
    OF_SITE {
        @Override
        Optional<String> site(Asked asked) {
            return Optional.of(asked.part("site"));
        }
    };

    /**
     * What its page shows.
     *
     * @param site by id; empty for all of the shop
     * @param sheet empty where what is asked for cannot be read
     */
    public record Shown(Optional<String> site, Optional<RefrigerantSheet> sheet, TypedFields typed) {}

    abstract Optional<String> site(Asked asked);

    @Override
    public Answer answer(Asked asked) {
        Validated<RefrigerantSheet> log = scope(asked, site(asked)).then(scope -> RefrigerantOffice.of(asked.book())
                .log(scope, Optional.of(asked.reader().language())));
        return Answer.Shown.orProblems("refrigerant",
                new Shown(site(asked), log.found(), new TypedFields(asked.fields(), log.problems())),
                log.map(RefrigerantSheet::data));
    }

    /** The same of a site as a paper, to be printed or saved. */
    public static Answer file(Asked asked) {
        String site = asked.part("site");
        PaperOptions options = new PaperOptions(Optional.empty(), asked.reader().today(), Optional.empty(),
                Extras.NONE);
        return Answer.of(scope(asked, Optional.of(site)).then(scope -> RefrigerantOffice.of(asked.book())
                .pdf(site, scope.machine(), scope.period(), options)),
                pdf -> new Answer.Sent(pdf, "refrigerant-" + site + ".pdf"));
    }

    private static Validated<RefrigerantOffice.Scope> scope(Asked asked, Optional<String> site) {
        Problems problems = new Problems();
        Optional<LocalDate> from = asked.day("from", problems);
        Optional<LocalDate> until = asked.day("until", problems);
        return problems.or(() -> new RefrigerantOffice.Scope(site, asked.text("machine"),
                new AskedPeriod(Optional.empty(), from, until)));
    }
}
