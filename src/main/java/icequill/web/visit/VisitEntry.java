package icequill.web.visit;

import icequill.answer.RecordedVisit;
import icequill.answer.entry.VisitChoices;
import icequill.answer.price.VisitPrice;
import icequill.ledger.papers.Pdf;
import icequill.office.asking.AskingOffice;
import icequill.office.asking.Draft;
import icequill.office.asking.KnownVisit;
import icequill.office.asking.KnownVisits;
import icequill.office.asking.TypedVisit;
import icequill.office.register.KeptDraft;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.web.page.Answer;
import icequill.web.page.Asked;
import icequill.web.page.FormPage;
import icequill.web.page.Page;
import icequill.web.page.PageDraft;
import icequill.web.page.Paths;
import icequill.web.page.TypedDay;
import icequill.web.page.TypedFields;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Enters a visit, corrects one that is not billed, or records a planned one as done: all of it on one page, with its price beside it. */
public final class VisitEntry implements Page, FormPage {

    private static final String VERSION = "version";
    private static final String CALL = "call";

    /**
     * What its page shows.
     *
     * @param known what the book says of the visit so far; empty for one that is new
     * @param version of that which is being changed; no letters for one that is new
     * @param kept keys of what the book says besides, and what stays
     * @param draft under which the page keeps what is typed
     * @param isGoingOn whether it goes on with something that was kept
     * @param begun what else was begun of this, and not stored
     * @param price empty before anything was typed
     * @param hindrances that keep it from having one, each at its field
     */
    public record Shown(String address, VisitChoices choices, Optional<KnownVisit> known, String version,
            List<String> kept, String draft, boolean isGoingOn, List<VisitDraft.Offered> begun,
            Optional<VisitPrice> price, List<Problem> hindrances, TypedFields typed) {}

    /** What a page is about. */
    private record Wanted(VisitChoices choices, Optional<KnownVisit> known) {

        /** Of a planned visit the doses too that its tasks take, by machine and label. */
        Map<String, List<String>> proposed(Map<String, List<String>> fields) {
            Map<String, List<String>> filled = new LinkedHashMap<>(fields);
            if (known.filter(KnownVisit::isPlanned).isPresent()) {
                choices.machines().forEach(machine -> machine.tasks().stream()
                        .filter(task -> fields.getOrDefault("task-" + machine.id(), List.of()).contains(task.id()))
                        .flatMap(task -> task.doses().stream()).forEach(dose -> filled.putIfAbsent(
                                ChemicalFields.dose(machine.id(), dose.material()), List.of(dose.quantity()))));
            }
            return filled;
        }

        String address() {
            return VisitDraft.address(choices.site(), known.map(KnownVisit::id).orElse(""));
        }
    }

    /** The page as it is opened, or as it stands while somebody types. */
    @Override
    public Answer answer(Asked asked) {
        return Answer.of(known(asked).then(known -> {
            PageDraft draft = VisitDraft.of(asked, site(asked, known));
            Optional<Answer> gone = isTyped(asked) ? Optional.empty() : draft.gone();
            if (gone.isPresent()) {
                return Validated.valid(gone.get());
            }
            Optional<Asked> typed = isTyped(asked)
                    ? Optional.of(asked)
                    : draft.found().map(kept -> goingOn(asked, kept))
                            .or(() -> known.map(visit -> asked.typing(VisitForm.fields(visit))))
                            .or(() -> answering(asked));
            return wanted(typed.orElse(asked), known).map(wanted -> typed
                    .map(fields -> isTyped(asked) || draft.found().isPresent()
                            ? fields
                            : fields.typing(wanted.proposed(fields.fields())))
                    .map(fields -> page(fields, wanted, priced(fields, wanted), isTyped(asked)))
                    .orElseGet(() -> shown(asked, wanted, Optional.empty(), TypedFields.NONE, List.of())));
        }), shown -> shown);
    }

    /** The draft of its invoice; the page where something is wrong. */
    public Answer paper(Asked asked) {
        AskingOffice office = AskingOffice.of(asked.book());
        return Answer.of(known(asked).then(known -> wanted(asked, known)), wanted -> {
            Validated<Pdf> printed = form(asked, wanted.known()).draft().then(draft -> office
                    .draftOfInvoice(named(office, wanted.known(), draft), asked.reader().today()));
            return printed instanceof Validated.Valid<Pdf>(Pdf pdf)
                    ? new Answer.Sent(pdf, "draft.pdf")
                    : page(asked, wanted, new Validated.Invalid<>(printed.problems()), true);
        });
    }

    private static boolean isTyped(Asked asked) {
        return asked.fields().keySet().stream().anyMatch(name -> !name.equals(PageDraft.ID) && !name.equals(CALL));
    }

    /** With what is known of the visit by the call that it answers; a name of no call is told once it is stored. */
    private static Optional<Asked> answering(Asked asked) {
        return asked.text(CALL).flatMap(call -> AskingOffice.of(asked.book()).answering(call).found())
                .filter(call -> call.site().equals(asked.part("site")))
                .map(call -> asked.typing(VisitForm.fields(call, asked.reader().today())));
    }

    private static Asked goingOn(Asked asked, KeptDraft draft) {
        Map<String, List<String>> fields = new LinkedHashMap<>(draft.fields());
        fields.put(PageDraft.ID, List.of(draft.id()));
        return asked.typing(fields);
    }

    @Override
    public Validated<String> done(Asked asked) {
        AskingOffice office = AskingOffice.of(asked.book());
        return known(asked).then(known -> VisitDraft.of(asked, site(asked, known)).once(() -> form(asked, known).draft()
                .then(draft -> known
                        .map(visit -> new KnownVisits(asked.book()).change(new TypedVisit(visit.id(), draft),
                                asked.text(VERSION).orElse("")))
                        .orElseGet(() -> office.store(office.typed(draft))))
                .map(RecordedVisit::visit).map(Paths::visit)));
    }

    @Override
    public Answer again(Asked sent, List<Problem> problems) {
        Asked asked = PageDraft.afresh(sent, problems);
        boolean isLater = problems.stream().anyMatch(problem -> problem.code() == Code.CHANGED_MEANWHILE
                && problem.place().equals(Place.NOWHERE));
        return isLater && asked.part("visit").isEmpty()
                ? new Answer.Refused(problems)
                : Answer.of(known(asked).then(known -> wanted(asked, known)),
                        wanted -> wanted.known().filter(now -> isLater)
                                .flatMap(now -> form(asked, wanted.known()).draft().found()
                                        .map(draft -> VisitConflict.page(
                                                asked, now, new TypedVisit(now.id(), draft), wanted.choices(),
                                                wanted.address())))
                                .orElseGet(() -> page(asked, wanted, new Validated.Invalid<>(problems), true)));
    }

    /** @param isTyped whether somebody typed it just now, who is to see at its fields what is wrong */
    private static Answer page(Asked asked, Wanted wanted, Validated<VisitPrice> price, boolean isTyped) {
        VisitForm form = form(asked, wanted.known());
        form.draft();
        return shown(asked, wanted, price.found(), new TypedFields(asked.fields(),
                isTyped ? form.atFields(price.problems()) : List.of()), form.atFields(price.problems()));
    }

    private static Answer shown(Asked asked, Wanted wanted, Optional<VisitPrice> price, TypedFields typed,
            List<Problem> hindrances) {
        PageDraft kept = VisitDraft.of(asked, wanted.choices().site());
        String draft = kept.id();
        String visit = wanted.known().map(KnownVisit::id).orElse("");
        return new Answer.Shown("visit-entry", new Shown(wanted.address(), wanted.choices(), wanted.known(),
                asked.text(VERSION).or(() -> wanted.known().map(KnownVisit::version)).orElse(""),
                form(asked, wanted.known()).alsoKept(), draft, kept.found().isPresent(),
                VisitDraft.all(asked).stream().filter(begun -> begun.isOf(wanted.choices().site(), visit))
                        .filter(begun -> !begun.draft().id().equals(draft)).toList(),
                price, hindrances, typed), wanted.choices());
    }

    private static Validated<VisitPrice> priced(Asked asked, Wanted wanted) {
        AskingOffice office = AskingOffice.of(asked.book());
        return form(asked, wanted.known()).draft()
                .then(draft -> office.price(named(office, wanted.known(), draft), asked.reader().language()))
                .map(sheet -> sheet.data(false));
    }

    private static TypedVisit named(AskingOffice office, Optional<KnownVisit> known, Draft draft) {
        return known.map(visit -> new TypedVisit(visit.id(), draft)).orElseGet(() -> office.typed(draft));
    }

    private static VisitForm form(Asked asked, Optional<KnownVisit> known) {
        return VisitForm.of(asked, site(asked, known), known);
    }

    private static String site(Asked asked, Optional<KnownVisit> known) {
        return known.map(KnownVisit::site).orElseGet(() -> asked.part("site"));
    }

    private static Validated<Optional<KnownVisit>> known(Asked asked) {
        String visit = asked.part("visit");
        return visit.isEmpty()
                ? Validated.valid(Optional.empty())
                : new KnownVisits(asked.book()).find(visit).map(Optional::of);
    }

    /** By the rates of the day that was typed, or of today where that has none, so that nothing typed is lost. */
    private static Validated<Wanted> wanted(Asked asked, Optional<KnownVisit> known) {
        String site = site(asked, known);
        AskingOffice office = AskingOffice.of(asked.book());
        LocalDate today = asked.reader().today();
        return asked.text("day").flatMap(text -> TypedDay.of(text, asked.reader(), "day").found())
                .flatMap(day -> office.choices(site, day, asked.reader().language()).found()).map(Validated::valid)
                .orElseGet(() -> office.choices(site, today, asked.reader().language()))
                .map(choices -> new Wanted(choices, known));
    }
}
