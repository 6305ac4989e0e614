package icequill.answer.agreement;

import icequill.files.answer.Sheet;
import icequill.render.words.Sentences;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import javax.money.MonetaryAmount;

/** What the transfer of an agreement comes to, for the screen in one language and as data. */
public record TransferSheet(AgreementTransfer data, Sentences sentences) implements Sheet {

    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(sentences.word(data.tried() ? "agreed.would-transfer" : "agreed.transfer", data.agreement(),
                data.formerName(), day(data.from()), data.next(), data.ownerName(), day(data.until())));
        lines.addAll(new EndLines(sentences, data.tried()).of(data.back(), data.credits(), data.unbilled()));
        if (!data.toBill().isEmpty()) {
            lines.add(sentences.word("agreed.to-bill-before", data.formerName(), String.join(", ", data.toBill())));
        }
        data.rest().forEach(rest -> {
            String text = sentences.word("agreed.rest-asked", data.ownerName(), amount(rest.amount()), rest.how());
            lines.add(data.rest().size() > 1 ? rest.site() + ": " + text : text);
            lines.addAll(rest.why());
        });
        data.payments().forEach(payment -> lines.add(sentences.word("agreed.payment",
                String.valueOf(payment.number()), day(payment.due()), amount(payment.net()))));
        data.visits().forEach(visit -> lines.add((data.rest().size() > 1 ? visit.site() + ": " : "")
                + sentences.word("agreed.visit", day(visit.day()), visit.scope())));
        return lines;
    }

    private String day(LocalDate day) {
        return sentences.formats().day(day);
    }

    private String amount(MonetaryAmount amount) {
        return sentences.formats().amount(amount);
    }
}
