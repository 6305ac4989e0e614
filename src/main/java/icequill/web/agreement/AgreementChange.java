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
import java.util.stream.Stream;

/** Takes machines, or a whole site, into an agreement or out of it in mid-term; it shows first what that comes to. */
public final class AgreementChange implements Page, FormPage {

    /** The field of ticked machines. */
    private static final String MACHINE = "machine";
    /** Ticked where the whole site goes out. */
    private static final String WHOLE = "removeSite";

    /**
     * What its page shows.
     *
     * @param site whose machines are changed, or that comes in
     * @param coming sites that may come in
     * @param would what it would come to; empty before that was asked for
     */
    public record Shown(AgreementAnswer agreement, OfSite site, List<OfSite> coming,
            Optional<AgreementChanging> would, TypedFields typed) {
        public Shown {
            coming = List.copyOf(coming);
        }

        /** Whether a machine is ticked: as it was typed, or else as it is looked after; all of a site that is to come in. */
        public boolean isTicked(KnownMachine machine) {
            return typed.fields().containsKey("day")
                    ? typed.has(MACHINE, machine.machine())
                    : machine.agreed() || comes();
        }

        /** Whether the site is to come in. */
        public boolean comes() {
            return coming.contains(site);
        }

        /** Whether the site may go out: not the only one, and not gone out already. */
        public boolean mayGo() {
            return !comes() && agreement.sites().size() > 1 && site.until().isEmpty();
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
        List<OfSite> coming = coming(asked);
        return new Answer.Shown("agreement-change",
                new Shown(sheet.data(), site(sheet, coming, asked), coming, would, typed),
                would.<Object>map(change -> change).orElseGet(sheet::data));
    }

    private static List<OfSite> coming(Asked asked) {
        return AgreementPage.office(asked).comingSites(asked.part("number")).found().orElse(List.of());
    }

    private static Validated<AgreementSheet> sheet(Asked asked) {
        return AgreementPage.office(asked).show(asked.part("number"));
    }

    /** The one that is named, or the first. */
    private static OfSite site(AgreementSheet sheet, List<OfSite> coming, Asked asked) {
        return Stream.concat(sheet.data().sites().stream(), coming.stream())
                .filter(site -> asked.text("site").filter(site.site()::equals).isPresent()).findFirst()
                .orElseGet(sheet.data().sites()::getFirst);
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
        List<OfSite> coming = coming(asked);
        OfSite site = site(sheet, coming, asked);
        return problems
                .or(() -> wish(asked, site, coming.contains(site), day, from.orElseThrow(), form.seen(), isTrial))
                .then(wish -> AgreementPage.office(asked).change(asked.part("number"), wish));
    }

    private static ChangeWish wish(Asked asked, OfSite site, boolean comes, LocalDate day, LocalDate from,
            Optional<Integer> seen, boolean isTrial) {
        List<String> ticked = asked.texts(MACHINE);
        boolean goes = asked.text(WHOLE).isPresent();
        Optional<String> id = Optional.of(site.site());
        return new ChangeWish(day, from, id.filter(one -> !comes && !goes), id.filter(one -> comes),
                id.filter(one -> goes && !comes),
                goes ? List.of() : machines(site, one -> !one.agreed() && ticked.contains(one.machine())),
                goes ? List.of() : machines(site, one -> one.agreed() && !ticked.contains(one.machine())),
                asked.text("who"), asked.text("words"), seen, isTrial);
    }

    private static List<String> machines(OfSite site, Predicate<KnownMachine> which) {
        return site.all().stream().filter(which).map(KnownMachine::machine).toList();
    }
}
