package icequill.office.days;

import icequill.answer.days.DayProposals;
import icequill.answer.days.DayProposals.Proposal;
import icequill.answer.days.DayProposals.Unplaced;
import icequill.answer.days.DaysSheet;
import icequill.days.DueVisit;
import icequill.days.Fixed;
import icequill.days.Going;
import icequill.days.Person;
import icequill.days.Placed;
import icequill.days.ProposedDays;
import icequill.days.Road;
import icequill.explain.Phrase;
import icequill.office.billing.FreeVisitId;
import icequill.office.billing.RecordOffice;
import icequill.office.care.HistoryOffice;
import icequill.party.Language;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.render.words.Sentences;
import icequill.shop.ShopBook;
import icequill.shop.life.FreeId;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The office that finds days for the visits that are due, and stores them as planned visits. */
public final class DaysOffice {

    private static final int HOUR = 60;
    private static final int DAY = 24 * HOUR;

    private final ShopBook book;

    private DaysOffice(ShopBook book) {
        this.book = book;
    }

    public static DaysOffice of(ShopBook book) {
        return new DaysOffice(book);
    }

    /**
     * Proposes days; nothing is stored, and nothing that is planned is moved.
     *
     * @param first the first day that may be proposed
     * @param until visits are due up to this day
     * @param people for whom, by name; all who made visits within a year where there are none
     * @param language of the reader; empty for the shop's
     */
    public Validated<DaysSheet> propose(LocalDate first, LocalDate until, List<String> people,
            Optional<Language> language) {
        return DueOffice.spans(first, until).then(last -> book.together(held -> DaysDesk.of(held, first, last)
                .then(desk -> HistoryOffice.sentences(desk.shop(), language).then(sentences -> desk.people(people)
                        .map(known -> new DaysSheet(told(desk, known, sentences), sentences))))));
    }

    private static DayProposals told(DaysDesk desk, List<Person> people, Sentences sentences) {
        ProposedDays days = desk.proposed(people);
        List<Unplaced> left = Stream.concat(
                days.left().stream().map(one -> left(one.due(), one.why(), sentences)),
                desk.open().stream().flatMap(visit -> ProposedDays.unsuited(visit).stream()
                        .map(why -> left(visit, why, sentences))))
                .toList();
        return new DayProposals(desk.first(), desk.until(), people.stream().map(Person::name).toList(),
                days.placed().stream().map(placed -> proposal(placed, sentences)).toList(), left, days.driving(),
                days.isBest(), desk.due().problems());
    }

    private static Unplaced left(DueVisit due, Phrase why, Sentences sentences) {
        return new Unplaced(due.agreement(), due.site().id(), due.site().name(), due.day(), what(due, sentences),
                sentences.say(why));
    }

    private static String what(DueVisit due, Sentences sentences) {
        return sentences.in(due.work().visit().slot().name());
    }

    private static Proposal proposal(Placed placed, Sentences sentences) {
        DueVisit due = placed.visit().due();
        return new Proposal(due.key(), due.agreement(), due.site().id(), due.site().name(), due.day(),
                what(due, sentences), placed.day(), placed.from().toString(), placed.until().toString(),
                placed.visit().minutes(), placed.going().stream()
                        .map(one -> new DayProposals.Going(one.person().name(), one.minutes())).toList(),
                placed.reasons().stream().map(sentences::say).toList(), Optional.empty());
    }

    /**
     * Stores visits on the days that somebody settled; all of them or none. What is no longer due, or cannot be kept, is a problem whose
     * place is the field of its row, such as {@code at-0}.
     *
     * @param first as it was proposed from
     * @return what they are called in the book, in the same order
     */
    public Validated<List<String>> store(List<ChosenDay> chosen, LocalDate first, LocalDate until) {
        return book.atOnce(held -> DaysDesk.of(held, first, until).then(desk -> {
            Problems problems = new Problems();
            List<PlannedForm> forms = new ArrayList<>();
            chosen.forEach(one -> form(desk, one, problems).ifPresent(forms::add));
            if (problems.isEmpty()) {
                problems.addAll(overlaps(forms, desk.fixed()));
            }
            return problems.or(() -> forms).then(all -> stored(held, all));
        }));
    }

    private static Validated<List<String>> stored(ShopBook held, List<PlannedForm> forms) {
        Problems problems = new Problems();
        List<String> ids = new ArrayList<>();
        for (PlannedForm form : forms) {
            String id = new FreeVisitId(held).like(FreeId.of(form.due().site().id(), form.at().toLocalDate()));
            if (problems.take(RecordOffice.of(held).record(form.named(id))).isPresent()) {
                ids.add(id);
            }
        }
        return problems.or(() -> List.copyOf(ids));
    }

    private static Optional<PlannedForm> form(DaysDesk desk, ChosenDay chosen, Problems problems) {
        Optional<DueVisit> due = desk.open().stream().filter(visit -> visit.key().equals(chosen.key())).findFirst();
        if (due.isEmpty()) {
            problems.add(new Problem(Code.CHANGED_MEANWHILE, field("day", chosen.row()),
                    "the visit \"" + chosen.key() + "\" is not due any more", "look at it anew"));
        }
        due.ifPresent(visit -> letIn(visit, chosen, problems));
        return due.flatMap(visit -> going(desk, visit, chosen, problems).map(going -> new PlannedForm(chosen.row(),
                visit, going, chosen.day().atTime(chosen.at()), desk.rates())));
    }

    /** Empty where somebody is not known, named twice or missing. */
    private static Optional<List<Going>> going(DaysDesk desk, DueVisit due, ChosenDay chosen, Problems problems) {
        List<Integer> stays = due.stays();
        List<Going> going = new ArrayList<>();
        for (int i = 0; i < stays.size(); i++) {
            String name = i < chosen.people().size() ? chosen.people().get(i) : "";
            Optional<Person> person = desk.stays().people().stream().filter(known -> known.name().equals(name))
                    .findFirst();
            if (person.isEmpty()) {
                problems.add(Problem.unknownName(person(chosen.row(), i), "person", name,
                        desk.stays().people().stream().map(Person::name).toList()));
            } else if (chosen.people().indexOf(name) < i) {
                problems.add(
                        new Problem(Code.DUPLICATE_NAME, person(chosen.row(), i), "\"" + name + "\" is named twice",
                                "somebody else"));
            } else {
                going.add(new Going(person.get(), stays.get(i)));
            }
        }
        return going.size() == stays.size() ? Optional.of(going) : Optional.empty();
    }

    /** The field of one of the people of a row, both from 0. */
    private static Place person(int row, int one) {
        return field("person-" + row, one);
    }

    private static void letIn(DueVisit due, ChosenDay chosen, Problems problems) {
        if (!due.site().isOpen(chosen.day())) {
            problems.add(new Problem(Code.NOT_ALLOWED, field("day", chosen.row()),
                    "the site is closed on " + chosen.day(), "a day on which it is open"));
        }
        int minutes = due.minutes().orElse(0);
        due.site().access().filter(hours -> !hours.contains(chosen.at()) || hours.left(chosen.at()) < minutes)
                .ifPresent(hours -> problems.add(new Problem(Code.OUT_OF_RANGE, field("at", chosen.row()),
                        "from " + chosen.at() + " for " + minutes + " minutes, but the site lets us in from "
                                + hours.from() + " to " + hours.until(),
                        "an hour within these")));
        if (minute(chosen.at()) + minutes > DAY) {
            problems.add(new Problem(Code.OUT_OF_RANGE, field("at", chosen.row()), "the visit would last past midnight",
                    "an earlier hour"));
        }
    }

    private static List<Problem> overlaps(List<PlannedForm> forms, List<Fixed> fixed) {
        List<Problem> problems = new ArrayList<>();
        for (int row = 0; row < forms.size(); row++) {
            PlannedForm form = forms.get(row);
            List<Fixed> others = Stream.concat(fixed.stream(), forms.subList(0, row).stream()
                    .flatMap(DaysOffice::stays)).toList();
            stays(form).forEach(stay -> others.stream()
                    .filter(other -> other.meets(stay.person(), stay.day(), stay.from(), stay.until())).findFirst()
                    .ifPresent(other -> problems.add(new Problem(Code.NOT_ALLOWED, field("at", form.row()),
                            stay.person() + " is at \"" + other.name() + "\" then",
                            "another hour, day or person"))));
        }
        return problems;
    }

    private static Stream<Fixed> stays(PlannedForm form) {
        int from = minute(form.at().toLocalTime());
        return form.going().stream().map(one -> new Fixed(form.due().site().id(), one.person().name(),
                form.at().toLocalDate(), from, from + one.minutes(), new Road(form.due().site().id(), 0, "")));
    }

    private static int minute(LocalTime time) {
        return time.getHour() * HOUR + time.getMinute();
    }

    private static Place field(String name, int row) {
        return new Place("", 0, name + "-" + row);
    }
}
