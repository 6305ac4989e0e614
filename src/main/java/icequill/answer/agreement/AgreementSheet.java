package icequill.answer.agreement;

import icequill.answer.agreement.AgreementAnswer.AgreementChange;
import icequill.answer.agreement.AgreementAnswer.Calls;
import icequill.answer.agreement.AgreementAnswer.DueVisit;
import icequill.answer.agreement.AgreementAnswer.OfSite;
import icequill.answer.agreement.AgreementAnswer.Payment;
import icequill.explain.ConstantKey;
import icequill.files.answer.Sheet;
import icequill.render.words.Sentences;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** An agreement, for the screen in one language and as data. */
public record AgreementSheet(AgreementAnswer data, Sentences sentences) implements Sheet {

    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(sentences.word("agreed.title", data.agreement(), data.customerName(), data.siteName(), stage()));
        add(lines, "agreed.plan", data.plan() + ", " + sentences.formats().amount(data.yearPrice()));
        lines.add(sentences.word("agreed.term", day(data.from()), day(data.until())));
        lines.add(ends());
        data.purchaseOrder().ifPresent(order -> add(lines, "fact.purchase-order", order));
        data.sites().stream().filter(site -> !site.machines().isEmpty() || site.from().or(site::until).isPresent())
                .forEach(site -> lines.add(machines(site)));
        data.sites().forEach(site -> site.calls().ifPresent(calls -> lines.add(calls(site, calls))));
        data.payments().forEach(payment -> lines.add(payment(payment)));
        data.visits().forEach(visit -> lines.add(visit(visit)));
        data.changes().forEach(change -> lines.add(change(change)));
        data.steps().forEach(step -> lines.add(day(step.day()) + ": " + step.told()
                + step.words().map(words -> ": " + words).orElse("")));
        if (!data.papers().isEmpty()) {
            add(lines, "agreed.papers", String.join(", ", data.papers()));
        }
        return lines;
    }

    private String stage() {
        return sentences.word("agreement-stage." + ConstantKey.of(data.stage()));
    }

    private String ends() {
        return data.lastDay().map(last -> sentences.word("agreed.ends", day(last)))
                .orElseGet(() -> sentences.word("agreed.goes-on-by-month"));
    }

    private String machines(OfSite site) {
        List<String> days = new ArrayList<>();
        site.from().ifPresent(from -> days.add(sentences.word("agreed.site-from", day(from))));
        site.until().ifPresent(last -> days.add(sentences.word("agreed.site-until", day(last))));
        return Stream.concat(Stream.of(site.name()), days.stream()).collect(Collectors.joining(", "))
                + (site.machines().isEmpty() ? "" : ": " + String.join(", ", site.machines()));
    }

    private String calls(OfSite site, Calls calls) {
        String text = sentences.word("agreed.calls", day(calls.from()), day(calls.until()),
                String.valueOf(calls.included()), String.valueOf(calls.used().size()), String.valueOf(calls.left()));
        return (data.sites().size() > 1 ? site.name() + ": " + text : text)
                + (calls.used().isEmpty() ? "" : " (" + String.join(", ", calls.used()) + ")");
    }

    private String payment(Payment payment) {
        String text = sentences.word("agreed.payment", String.valueOf(payment.number()), day(payment.due()),
                sentences.formats().amount(payment.net()));
        String back = payment.givenBack().isZero()
                ? ""
                : ", " + sentences.word("agreed.given-back", sentences.formats().amount(payment.givenBack()));
        return text + back + ", " + payment.invoice().orElseGet(() -> sentences.word("agreed.not-billed"));
    }

    private String visit(DueVisit visit) {
        return sentences.word("agreed.visit", day(visit.day()), visit.scope()) + ", "
                + (data.sites().size() > 1 ? visit.site() + ", " : "")
                + visit.done().orElseGet(() -> sentences.word(visit.late() ? "agreed.not-done" : "agreed.to-come"));
    }

    private String change(AgreementChange change) {
        return sentences.word("agreed.change", day(change.from()),
                new MovedLine(sentences, data.sites().size() > 1).of(change.moved()),
                sentences.formats().amount(change.price()),
                change.how());
    }

    private String day(LocalDate day) {
        return sentences.formats().day(day);
    }

    private void add(List<String> lines, String key, String text) {
        lines.add(sentences.word(key) + ": " + text);
    }
}
