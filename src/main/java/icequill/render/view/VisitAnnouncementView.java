package icequill.render.view;

import icequill.document.VisitAnnouncement;
import icequill.document.VisitAnnouncement.OfMachine;
import icequill.money.Exact;
import icequill.party.Contact;
import icequill.render.page.Page;
import icequill.render.page.Texts;
import icequill.render.words.MachineName;
import icequill.render.words.Sentences;
import icequill.work.Quantity;
import icequill.work.Unit;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** The announcement of a visit as texts, ready for {@code visit-announcement.ftlh}. */
public record VisitAnnouncementView(VisitAnnouncement paper, Sentences sentences) {

    private static final int MINUTES_OF_DAY = 1440;

    public static Page of(VisitAnnouncement paper) {
        return new VisitAnnouncementView(paper, Sentences.of(paper.language(), paper.shop().address().country()))
                .page();
    }

    /**
     * What is to come.
     *
     * @param answer who comes when
     * @param prepare what the customer does before
     * @param change whom to call
     */
    record Announced(String answer, List<Details.Row> rows, List<Machine> machines, List<String> prepare,
            String change)
            implements
            Texts {}

    /**
     * A machine.
     *
     * @param tasks may be empty
     * @param off whether and how long it makes no ice
     */
    record Machine(String name, String tasks, String off) implements Texts {}

    private Page page() {
        List<Details.Row> facts = new Details(sentences).add("record.written", day(paper.date()))
                .add("fact.store", paper.where().storeNumber())
                .add("fact.purchase-order", paper.purchaseOrder()).add("announce.agreement", paper.agreement())
                .rows();
        return Page.of(
                new LetterView(paper, new LetterView.Title(sentences.word("announce.title"),
                        Optional.of(paper.visit())), sentences)
                        .letter(paper.customer(), paper.where().site(), paper.where().address(), facts),
                new Announced(sentences.word("announce.answer",
                        sentences.formats().dayOfWeek(paper.begins().toLocalDate()), begins(),
                        ends()), rows(), paper.machines().stream().map(this::machine).toList(), prepare(),
                        sentences.word("announce.change", paper.shop().phone(), paper.shop().email(),
                                paper.visit())));
    }

    private String day(LocalDate day) {
        return sentences.formats().day(day);
    }

    private String begins() {
        return sentences.formats().time(paper.begins().toLocalTime());
    }

    /** With its day where the visit runs into another. */
    private String ends() {
        String time = sentences.formats().time(paper.ends().toLocalTime());
        return paper.begins().toLocalDate().equals(paper.ends().toLocalDate())
                ? time
                : day(paper.ends().toLocalDate()) + ", " + time;
    }

    private List<Details.Row> rows() {
        return new Details(sentences).add(paper.people().size() == 1 ? "visit.person" : "visit.people",
                String.join(", ", paper.people())).add("visit.symptom", paper.symptom()).rows();
    }

    private Machine machine(OfMachine machine) {
        return new Machine(new MachineName(machine.machine(), sentences).text(),
                Sentences.capitalized(String.join("; ", machine.tasks())),
                machine.stopsIce()
                        ? sentences.word("announce.off", sentences.duration(minutes()), missing(machine))
                        : sentences.word("announce.stays-on"));
    }

    private int minutes() {
        return (int) Duration.between(paper.begins(), paper.ends()).toMinutes();
    }

    /** What it would make in that time at its rating, rounded up to whole pounds. */
    private String missing(OfMachine machine) {
        BigFraction made = Exact.of(machine.machine().harvestRate()).multiply(minutes()).divide(MINUTES_OF_DAY);
        return sentences.quantity(new Quantity(
                Exact.upToMultiple(made, BigDecimal.ONE).bigDecimalValue(), Unit.POUND));
    }

    private List<String> prepare() {
        List<String> prepare = new ArrayList<>();
        prepare.add(paper.letsIn().map(contact -> sentences.word("announce.let-in-by", reached(contact)))
                .orElseGet(() -> sentences.word("announce.let-in")));
        paper.access().ifPresent(hours -> prepare.add(sentences.word("announce.access",
                sentences.formats().time(hours.from()), sentences.formats().time(hours.until()))));
        prepare.add(sentences.word("announce.room"));
        if (paper.machines().stream().anyMatch(OfMachine::reachesIce)) {
            prepare.add(sentences.word("announce.empty"));
        }
        if (paper.machines().stream().anyMatch(OfMachine::stopsIce)) {
            prepare.add(sentences.word("announce.ice"));
        }
        return prepare;
    }

    private static String reached(Contact contact) {
        return Stream.concat(Stream.of(contact.name()), contact.telephone().stream())
                .collect(Collectors.joining(", "));
    }
}
