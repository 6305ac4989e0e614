package icequill.answer.history;

import icequill.explain.ConstantKey;
import icequill.render.words.Sentences;
import icequill.work.Finding;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A visit as lines for a screen, as papers say it. */
final class VisitText {

    private static final String INDENT = "  ";

    private final Sentences sentences;

    VisitText(Sentences sentences) {
        this.sentences = sentences;
    }

    List<String> lines(ToldVisit visit) {
        List<String> lines = new ArrayList<>();
        boolean isSale = visit.sold().isPresent();
        lines.add(sentences.word(isSale ? "history.sale" : "history.visit",
                isSale
                        ? sentences.formats().day(visit.began().toLocalDate())
                        : times(visit.began(), visit.ended()),
                visit.id(),
                sentences.word("visit-state." + ConstantKey.of(visit.state()))));
        visit.withdrawn().ifPresent(why -> add(lines, 1, "history.withdrawn", why));
        if (visit.isForgotten()) {
            lines.add(INDENT + sentences.word("history.forgotten"));
        }
        visit.call().ifPresent(call -> {
            add(lines, 1, "visit.asked", call.askedBy() + ", " + moment(call.at()));
            add(lines, 1, "visit.symptom", call.symptom());
            call.promised().ifPresent(promised -> add(lines, 1, "visit.promised", moment(promised)));
        });
        if (!visit.people().isEmpty()) {
            add(lines, 1, visit.people().size() == 1 ? "visit.person" : "visit.people",
                    visit.people().stream().map(person -> person(visit, person)).collect(Collectors.joining("; ")));
        }
        visit.purchaseOrder().ifPresent(order -> add(lines, 1, "fact.purchase-order", order));
        visit.approver().ifPresent(who -> add(lines, 1, "visit.approved", who));
        visit.machines().forEach(machine -> machine(visit, machine, lines));
        addAll(lines, 1, parts(visit), visit.parts());
        visit.safeFrom()
                .ifPresent(safe -> add(lines, 1, "record.ice", sentences.word("record.ice-thrown", moment(safe))));
        visit.nextDue().ifPresent(day -> add(lines, 1, "record.next-due", sentences.formats().day(day)));
        return lines;
    }

    private void machine(ToldVisit visit, ToldMachine machine, List<String> lines) {
        lines.add(INDENT + machine.name());
        machine.complaint().ifPresent(
                text -> add(lines, 2, visit.call().isPresent() ? "machine.complaint" : "machine.reason", text));
        machine.cause().ifPresent(text -> add(lines, 2, "machine.cause", text));
        machine.side().ifPresent(side -> add(lines, 2, "machine.side",
                sentences.word("call-side." + ConstantKey.of(side))));
        machine.correction().ifPresent(text -> add(lines, 2, "machine.correction", text));
        addAll(lines, 2, visit.state() == VisitState.PLANNED ? "history.to-do" : "machine.tasks", machine.tasks());
        addAll(lines, 2, parts(visit), machine.parts());
        addAll(lines, 2, "leak.kind", machine.refrigerant());
        addAll(lines, 2, "history.readings", machine.readings().stream().map(this::reading).toList());
        addAll(lines, 2, "outcome.declined", machine.declined());
        machine.recommendations().forEach(advice -> add(lines, 2,
                advice.accepted() ? "machine.recommended-accepted" : "machine.recommended-declined", advice.text()));
    }

    private static String parts(ToldVisit visit) {
        return visit.state() == VisitState.PLANNED ? "history.to-bring" : "record.used";
    }

    private void addAll(List<String> lines, int depth, String key, List<String> texts) {
        if (!texts.isEmpty()) {
            add(lines, depth, key, Sentences.capitalized(String.join("; ", texts)) + ".");
        }
    }

    private void add(List<String> lines, int depth, String key, String text) {
        lines.add(INDENT.repeat(depth) + sentences.word(key) + ": " + text);
    }

    private String reading(Finding.Reading reading) {
        String unit = reading.unit().isEmpty() ? "" : " " + reading.unit();
        return reading.what() + " " + Stream.of(side("history.before", reading.before(), unit),
                side("history.after", reading.after(), unit)).flatMap(Optional::stream)
                .collect(Collectors.joining(", "));
    }

    private Optional<String> side(String key, Optional<String> value, String unit) {
        return value.map(found -> sentences.word(key, found + unit));
    }

    /** Own times are said of those who did not stay from the first arrival to the last departure. */
    private String person(ToldVisit visit, ToldVisit.Person person) {
        boolean throughout = person.arrived().isEqual(visit.began()) && person.left().isEqual(visit.ended());
        return person.name() + ", " + person.grade()
                + (throughout
                        ? ""
                        : ", " + sentences.formats().time(person.arrived().toLocalTime()) + " – "
                                + until(person.arrived(), person.left()));
    }

    private String times(ZonedDateTime from, ZonedDateTime until) {
        return moment(from) + " – " + until(from, until);
    }

    private String until(ZonedDateTime from, ZonedDateTime until) {
        return from.toLocalDate().equals(until.toLocalDate())
                ? sentences.formats().time(until.toLocalTime())
                : moment(until);
    }

    private String moment(ZonedDateTime moment) {
        return sentences.formats().day(moment.toLocalDate()) + ", " + sentences.formats().time(moment.toLocalTime());
    }
}
