package icequill.office.days;

import icequill.answer.days.CalendarSheet;
import icequill.answer.days.PersonCalendar;
import icequill.answer.days.PersonCalendar.Entry;
import icequill.files.form.VisitNames;
import icequill.files.form.VisitStays;
import icequill.files.form.VisitStays.Stay;
import icequill.ledger.Reading;
import icequill.ledger.entries.VisitEntry;
import icequill.ledger.entries.VisitQuestion;
import icequill.ledger.trail.Subject;
import icequill.ledger.trail.TrailRow;
import icequill.office.care.HistoryOffice;
import icequill.party.Contact;
import icequill.party.Language;
import icequill.party.Machine;
import icequill.party.Site;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.render.words.MachineName;
import icequill.render.words.Sentences;
import icequill.shop.BookForms;
import icequill.shop.ShopBook;
import icequill.shop.ShopFolder;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The office that hands each person a calendar of his visits. */
public final class CalendarOffice {

    private static final int USUAL_MONTHS = 3;

    private final ShopBook book;

    private CalendarOffice(ShopBook book) {
        this.book = book;
    }

    public static CalendarOffice of(ShopBook book) {
        return new CalendarOffice(book);
    }

    /** Up to which day visits are shown where nobody says. */
    public static LocalDate usualUntil(LocalDate from) {
        return from.plusMonths(USUAL_MONTHS);
    }

    /**
     * The planned visits of somebody.
     *
     * @param person by name, as visits have it
     * @param language of the reader; empty for the shop's
     */
    public Validated<CalendarSheet> calendar(String person, LocalDate from, LocalDate until,
            Optional<Language> language) {
        return book.together(held -> {
            ShopFolder shop = BookForms.shop(held);
            return HistoryOffice.sentences(shop, language).then(sentences -> held.read(open -> known(open, person)
                    .map(name -> new CalendarSheet(new PersonCalendar(name, from, until,
                            planned(open, name, from, until).stream()
                                    .flatMap(entry -> entry(open, entry, name, shop, sentences).stream())
                                    .toList()),
                            sentences))));
        });
    }

    /** Those whom any visit that stands names, by name. */
    private static List<String> people(Reading open) {
        Set<String> withdrawn = open.entries().withdrawals().keySet();
        return open.entries().visits(VisitQuestion.ALL).stream()
                .filter(entry -> !withdrawn.contains(entry.id()) && !entry.isForgotten())
                .flatMap(entry -> VisitNames.of(entry.data()).people().stream()).distinct().sorted().toList();
    }

    private static Validated<String> known(Reading open, String person) {
        List<String> known = people(open);
        return known.contains(person)
                ? Validated.valid(person)
                : Validated.invalid(Problem.unknownName(new Place("", 0, "person"), "person", person, known));
    }

    private static List<VisitEntry> planned(Reading open, String person, LocalDate from, LocalDate until) {
        Set<String> withdrawn = open.entries().withdrawals().keySet();
        return open.entries().visits(new VisitQuestion(List.of(), Optional.of(from), Optional.of(until))).stream()
                .filter(entry -> entry.isPlanned() && !entry.isForgotten() && !withdrawn.contains(entry.id())
                        && VisitNames.of(entry.data()).people().contains(person))
                .toList();
    }

    private static Optional<Entry> entry(Reading open, VisitEntry visit, String person, ShopFolder shop,
            Sentences sentences) {
        Optional<Stay> stay = VisitStays.of(visit.data(), visit.began().getZone()).of(person);
        return shop.site(visit.site(), Place.NOWHERE).flatMap(site -> open.trail().newest(Subject.VISIT, visit.id())
                .map(TrailRow::at).map(changed -> new Entry(visit.id(), site.id(), title(site),
                        stay.map(Stay::from).orElse(visit.began()), stay.map(Stay::until).orElse(visit.ended()),
                        String.join(", ", site.address().lines()),
                        notes(site, VisitNames.of(visit.data()).machines(), sentences), changed)));
    }

    private static String title(Site site) {
        return site.name() + site.storeNumber().map(store -> " " + store).orElse("");
    }

    private static List<String> notes(Site site, List<String> machines, Sentences sentences) {
        List<String> notes = new ArrayList<>();
        site.access().ifPresent(hours -> notes.add(sentences.word("page.site.access", hours.from().toString(),
                hours.until().toString())));
        site.parking().ifPresent(text -> notes.add(sentences.word("page.site.parking") + ": " + text));
        site.roof().ifPresent(text -> notes.add(sentences.word("page.site.roof") + ": " + text));
        site.contactFor(Contact.Purpose.VISITS).ifPresent(contact -> notes.add(sentences.word("page.site.call") + ": "
                + Stream.concat(Stream.of(contact.name()), contact.telephone().stream())
                        .collect(Collectors.joining(", "))));
        site.machines().stream().filter(machine -> machines.contains(machine.id()))
                .map(machine -> name(machine, sentences)).forEach(notes::add);
        return notes;
    }

    private static String name(Machine machine, Sentences sentences) {
        return new MachineName(machine, sentences).text();
    }
}
