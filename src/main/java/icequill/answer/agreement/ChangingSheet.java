package icequill.answer.agreement;

import icequill.answer.agreement.AgreementChanging.Part;
import icequill.answer.agreement.AgreementChanging.Payment;
import icequill.files.answer.Sheet;
import icequill.render.words.Sentences;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/** What a change of what an agreement looks after comes to, for the screen in one language and as data. */
public record ChangingSheet(AgreementChanging data, Sentences sentences) implements Sheet {

    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(sentences.word(data.tried() ? "agreed.would-change" : "agreed.changed", data.agreement(),
                sentences.formats().day(data.from()), new MovedLine(sentences, false).of(data.moved())));
        lines.add(sentences.word("agreed.year-price", amount(data.yearBefore()), amount(data.yearAfter())));
        data.price().forEach(part -> lines.addAll(part(part)));
        visits().forEach(lines::add);
        if (!data.planned().isEmpty()) {
            lines.add(sentences.word("agreed.planned-out", String.join(", ", data.planned())));
        }
        data.payments().forEach(payment -> lines.add(payment(payment)));
        data.credits().forEach(credit -> lines.add(data.tried() ? credit.description() : credit.title()));
        return lines;
    }

    private Stream<String> visits() {
        String days = data.visits().isEmpty()
                ? sentences.word("history.none")
                : data.visits().stream().map(sentences.formats()::day).collect(Collectors.joining("; "));
        return switch (data.moved().what()) {
        case SITE_IN -> Stream.of(sentences.word("agreed.visits-in", days));
        case SITE_OUT -> Stream.of(sentences.word("agreed.visits-out", days));
        case MACHINES -> Stream.empty();
        };
    }

    private List<String> part(Part part) {
        List<String> lines = new ArrayList<>();
        String text = sentences.word("agreed.rest-of-term", amount(part.amount()), part.how());
        lines.add(data.price().size() > 1 ? part.site() + ": " + text : text);
        lines.addAll(part.why());
        return lines;
    }

    private String payment(Payment payment) {
        String text = sentences.word("agreed.payment", String.valueOf(payment.number()),
                sentences.formats().day(payment.due()), amount(payment.net()));
        return payment.before().map(before -> text + ", " + sentences.word("agreed.payment-before", amount(before)))
                .orElse(text);
    }

    private String amount(MonetaryAmount amount) {
        return sentences.formats().amount(amount);
    }
}
