package icequill.answer;

import icequill.account.Claim;
import icequill.account.Owed;
import icequill.agreement.Installment;
import icequill.document.CallCharge;
import icequill.document.CreditNote;
import icequill.document.InvoiceLine;
import icequill.document.MaintenanceQuote;
import icequill.document.Paper;
import icequill.document.PlanChoice;
import icequill.document.PlanYear;
import icequill.document.PricedPaper;
import icequill.document.Reminder;
import icequill.document.RenewalNotice;
import icequill.document.RepairQuote;
import icequill.document.ServiceAgreement;
import icequill.document.Statement;
import icequill.explain.ConstantKey;
import icequill.money.Amounts;
import icequill.party.Language;
import icequill.render.words.Sentences;
import icequill.tax.TaxTotal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javax.money.MonetaryAmount;

/**
 * Every amount that a paper has, by name, as texts with the currency's decimals. What a credit gives back is negative here,
 * whatever sign it has on paper.
 */
public record PaperAmounts(Language language, Sentences sentences) {

    /** Empty for a paper whose figures have a form of their own, or that has none. */
    public static Map<String, Object> of(Paper paper) {
        PaperAmounts amounts = new PaperAmounts(paper.language(),
                Sentences.of(paper.language(), paper.shop().address().country()));
        return switch (paper) {
        case CreditNote credit -> amounts.priced(credit, MonetaryAmount::negate);
        case RepairQuote quote -> amounts.repair(quote);
        case PricedPaper priced -> amounts.priced(priced, amount -> amount);
        case MaintenanceQuote quote -> amounts.maintenance(quote);
        case ServiceAgreement agreement -> amounts.agreement(agreement);
        case RenewalNotice notice -> renewal(notice);
        case Statement statement -> statement(statement);
        case Reminder reminder -> reminder(reminder);
        default -> Map.of();
        };
    }

    private Map<String, Object> priced(PricedPaper paper, UnaryOperator<MonetaryAmount> sign) {
        Map<String, Object> view = currency(paper.totals().gross());
        view.put("lines", paper.lines().stream().map(line -> line(line, sign)).toList());
        paper.totals().discount().ifPresent(off -> view.put("discount", plain(sign.apply(off.amount().negate()))));
        view.put("net", plain(sign.apply(paper.totals().net())));
        view.put("taxes", paper.totals().taxes().stream().map(total -> tax(total, sign)).toList());
        view.put("tax", plain(sign.apply(paper.totals().tax())));
        view.put("gross", plain(sign.apply(paper.totals().gross())));
        return view;
    }

    private Map<String, Object> repair(RepairQuote quote) {
        Map<String, Object> view = priced(quote, amount -> amount);
        quote.deposit().ifPresent(deposit -> {
            view.put("deposit", plain(deposit.amount()));
            view.put("rest", plain(deposit.rest()));
        });
        return view;
    }

    private Map<String, Object> line(InvoiceLine line, UnaryOperator<MonetaryAmount> sign) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("text", sentences.say(line.text()));
        view.put("outcome", ConstantKey.of(line.outcome()));
        view.put("list", plain(sign.apply(line.list())));
        view.put("allowance", plain(sign.apply(line.allowance())));
        view.put("net", plain(sign.apply(line.net())));
        view.put("taxBase", plain(sign.apply(line.tax().base())));
        return view;
    }

    private Map<String, Object> tax(TaxTotal total, UnaryOperator<MonetaryAmount> sign) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("category", total.rate().category().name());
        view.put("percent", total.rate().total().value().toPlainString());
        view.put("base", plain(sign.apply(total.base())));
        view.put("amount", plain(sign.apply(total.tax())));
        view.put("parts", total.components().stream().map(part -> Map.of("name", part.component().name().in(language),
                "percent", part.component().percent().value().toPlainString(), "amount",
                plain(sign.apply(part.amount())))).toList());
        return view;
    }

    private Map<String, Object> maintenance(MaintenanceQuote quote) {
        Map<String, Object> view = currency(quote.choices().getFirst().net());
        view.put("choices", quote.choices().stream().map(this::choice).toList());
        view.put("plans", quote.plans().stream().map(this::year).toList());
        view.put("calls", quote.calls().stream().map(this::call).toList());
        quote.catchUp().ifPresent(catchUp -> view.put("catchUp", Map.of("usual", plain(catchUp.usual()), "whole",
                plain(catchUp.whole()), "extra", plain(catchUp.extra()), "tax", plain(catchUp.tax()))));
        quote.lastYear().ifPresent(past -> view.put("lastYear", Map.of("calls", past.calls(), "each",
                plain(past.each()), "together", plain(past.together()))));
        return view;
    }

    private Map<String, Object> choice(PlanChoice choice) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("kind", ConstantKey.of(choice.kind()));
        choice.plan().ifPresent(plan -> view.put("plan", plan.in(language)));
        view.put("visits", choice.visits());
        view.put("net", plain(choice.net()));
        view.put("tax", plain(choice.tax()));
        view.put("gross", plain(choice.gross()));
        view.put("payments", payments(choice.payments()));
        return view;
    }

    private Map<String, Object> year(PlanYear year) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("plan", year.tier().name().in(language));
        view.put("visits", year.visits().stream().map(alike -> Map.of("count", alike.visits().size(), "net",
                plain(alike.net()), "lines", alike.lines().stream().map(line -> line(line, amount -> amount)).toList()))
                .toList());
        view.put("list", plain(year.list()));
        view.put("discount", plain(year.discount().negate()));
        view.put("reserve", plain(year.reserve()));
        view.put("price", plain(year.price()));
        return view;
    }

    private Map<String, Object> call(CallCharge call) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("band", call.band().id());
        view.put("serviceCall", plain(call.serviceCall()));
        view.put("hours", call.grades().stream().map(this::hour).toList());
        call.includes().ifPresent(minutes -> view.put("includedMinutes", minutes));
        view.put("least", plain(call.least()));
        return view;
    }

    private Map<String, Object> hour(CallCharge.Hour hour) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("grade", hour.grade().in(language));
        view.put("price", plain(hour.price()));
        hour.firstHour().ifPresent(price -> view.put("firstHour", plain(price)));
        view.put("minimumMinutes", hour.minimum());
        return view;
    }

    private Map<String, Object> agreement(ServiceAgreement agreement) {
        Map<String, Object> view = currency(agreement.yearPrice());
        view.put("yearPrice", plain(agreement.yearPrice()));
        view.put("termPrice", plain(agreement.termPrice()));
        view.put("payments", payments(agreement.payments()));
        view.put("changes", agreement.changes().stream().map(change -> Map.of("from", change.price().from().toString(),
                "yearDifference", plain(change.yearDifference()), "price", plain(change.price().amount()))).toList());
        view.put("calls", agreement.calls().stream().map(this::call).toList());
        return view;
    }

    private static List<Map<String, Object>> payments(List<Installment> payments) {
        return payments.stream().<Map<String, Object>>map(payment -> Map.of("number", payment.number(), "due",
                payment.due().toString(), "amount", plain(payment.amount()))).toList();
    }

    private static Map<String, Object> renewal(RenewalNotice notice) {
        Map<String, Object> view = currency(notice.price().old());
        view.put("old", plain(notice.price().old()));
        view.put("new", plain(notice.price().price()));
        view.put("difference", plain(notice.price().difference()));
        return view;
    }

    private static Map<String, Object> statement(Statement statement) {
        Map<String, Object> view = currency(statement.balance());
        view.put("balance", plain(statement.balance()));
        view.put("owed", statement.owed().stream().map(PaperAmounts::owed).toList());
        view.put("credits", statement.credits().stream().map(credit -> {
            Map<String, Object> one = new LinkedHashMap<>();
            credit.number().ifPresent(number -> one.put("number", number));
            one.put("date", credit.date().toString());
            one.put("open", plain(credit.open().negate()));
            return one;
        }).toList());
        view.put("notYetDue", plain(statement.ageing().notYetDue()));
        view.put("pastDue", statement.ageing().pastDue().stream().map(PaperAmounts::plain).toList());
        view.put("broughtForward", plain(statement.broughtForward()));
        view.put("movements", statement.lines().stream().map(line -> {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("date", line.movement().date().toString());
            one.put("kind", ConstantKey.of(line.movement().kind()));
            one.put("numbers", line.movement().numbers());
            one.put("amount", plain(line.movement().amount()));
            one.put("balance", plain(line.balance()));
            return one;
        }).toList());
        return view;
    }

    private static Map<String, Object> owed(Owed owed) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("number", owed.number());
        view.put("due", owed.due().toString());
        view.put("total", plain(owed.total()));
        view.put("paid", plain(owed.paid().negate()));
        view.put("credited", plain(owed.credited().negate()));
        view.put("open", plain(owed.open()));
        owed.disputed().ifPresent(part -> view.put("disputed", plain(part.amount())));
        return view;
    }

    private static Map<String, Object> reminder(Reminder reminder) {
        Map<String, Object> view = currency(reminder.claims().asked());
        view.put("claims", reminder.claims().claims().stream().map(PaperAmounts::claim).toList());
        view.put("disputed", reminder.claims().disputed().stream().map(PaperAmounts::owed).toList());
        view.put("asked", plain(reminder.claims().asked()));
        view.put("forPayingLate", plain(reminder.claims().onTop()));
        view.put("total", plain(reminder.claims().total()));
        return view;
    }

    private static Map<String, Object> claim(Claim claim) {
        Map<String, Object> view = owed(claim.owed());
        view.put("setOff", plain(claim.setOff().negate()));
        view.put("asked", plain(claim.asked()));
        Optional<Claim.Late> late = claim.late();
        late.ifPresent(one -> view.put("interest", plain(one.interest())));
        late.flatMap(Claim.Late::fixed).ifPresent(fixed -> view.put("compensation", plain(fixed)));
        return view;
    }

    private static Map<String, Object> currency(MonetaryAmount amount) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("currency", amount.getCurrency().getCurrencyCode());
        return view;
    }

    private static String plain(MonetaryAmount amount) {
        return Amounts.plain(amount);
    }
}
