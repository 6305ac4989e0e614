package icequill.web.agreement;

import icequill.answer.agreement.AgreementAnswer;
import icequill.answer.agreement.AgreementAnswer.KnownMachine;
import icequill.answer.agreement.AgreementAnswer.OfSite;
import icequill.answer.agreement.AgreementChanging;
import icequill.answer.agreement.AgreementSheet;
import icequill.answer.agreement.ChangingSheet;
import icequill.office.agreement.ChangeWish;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Page;
import icequill.web.page.Paths;
import icequill.web.page.TypedFields;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Takes machines into an agreement, or out of it, in mid-term; it shows first what that comes to. */
public final class AgreementChange implements Page, FormPage {

    /** The field of ticked machines. */
    private static final String MACHINE = "machine";

    /**
     * What its page shows.
     *
     * @param site whose machines are changed
     * @param would what it would come to; empty before that was asked for
     */
    public record Shown(AgreementAnswer agreement, OfSite site, Optional<AgreementChanging> would, TypedFields typed) {

        /** Whether a machine is ticked: as it was typed, or else as it is looked after. */
        public boolean isTicked(KnownMachine machine) {
            return typed.fields().containsKey("day")
                    ? typed.has(MACHINE, machine.machine())
                    : machine.agreed();
        }
    }

    @Override
    public Answer answer(Asked asked) {
        return Answer.of(sheet(asked), sheet -> asked.fields().containsKey("day")
                ? tried(sheet, asked)
                : page(sheet, asked, Optional.empty(), TypedFields.NONE));
    }

    private static Answer tried(AgreementSheet sheet, Asked asked) {
        Validated<ChangingSheet> would = change(asked, sheet, true);
        return page(sheet, asked, would.found().map(ChangingSheet::data),
                new TypedFields(asked.fields(), would.problems()));
    }

    @Override
    public Validated<String> done(Asked asked) {
        return sheet(asked).then(sheet -> change(asked, sheet, false))
                .map(change -> Paths.agreement(change.data().agreement()));
    }

    @Override
    public Answer again(Asked asked, List<Problem> problems) {
        return Answer.of(sheet(asked), sheet -> page(sheet, asked, Optional.empty(),
                new TypedFields(asked.fields(), problems)));
    }

    private static Answer page(AgreementSheet sheet, Asked asked, Optional<AgreementChanging> would,
            TypedFields typed) {
        return new Answer.Shown("agreement-change", new Shown(sheet.data(), site(sheet, asked), would, typed),
                would.<Object>map(change -> change).orElseGet(sheet::data));
    }

    private static Validated<AgreementSheet> sheet(Asked asked) {
        return AgreementPage.office(asked).show(asked.part("number"));
    }

    /** The one that is named, or the first. */
    private static OfSite site(AgreementSheet sheet, Asked asked) {
        List<OfSite> all = sheet.data().sites();
        return all.stream().filter(site -> asked.text("site").filter(site.site()::equals).isPresent()).findFirst()
                .orElseGet(all::getFirst);
    }

    private static Validated<ChangingSheet> change(Asked asked, AgreementSheet sheet, boolean isTrial) {
        Problems problems = new Problems();
        NoticeForm form = new NoticeForm(asked, problems);
        Optional<LocalDate> from = form.day("from");
        if (from.isEmpty() && problems.isEmpty()) {
            problems.add(Code.MISSING, new Place("", 0, "from"), "no first day is given",
                    "the first day of the change");
        }
        LocalDate day = form.day();
        OfSite site = site(sheet, asked);
        List<String> ticked = asked.texts(MACHINE);
        return problems.or(() -> new ChangeWish(day, from.orElseThrow(), Optional.of(site.site()),
                machines(site, machine -> !machine.agreed() && ticked.contains(machine.machine())),
                machines(site, machine -> machine.agreed() && !ticked.contains(machine.machine())), asked.text("who"),
                asked.text("words"), form.seen(), isTrial))
                .then(wish -> AgreementPage.office(asked).change(asked.part("number"), wish));
    }

    private static List<String> machines(OfSite site, Predicate<KnownMachine> which) {
        return site.all().stream().filter(which).map(KnownMachine::machine).toList();
    }
}
