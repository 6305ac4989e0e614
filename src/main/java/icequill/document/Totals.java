package icequill.document;

import icequill.account.Invoiced;
import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.money.Percent;
import icequill.tax.TaxPlace;
import icequill.tax.TaxTotal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * The sums of a paper.
 *
 * @param lines the lines' nets together
 * @param discount on the whole document
 * @param net what is left, before tax
 * @param taxPlace whose rules were used
 * @param gross net and tax together: what is due
 * @param early what is enough if it is paid early
 */
public record Totals(MonetaryAmount lines, Optional<Discount> discount, MonetaryAmount net, TaxPlace taxPlace,
        List<TaxTotal> taxes, MonetaryAmount tax, MonetaryAmount gross, Optional<EarlyPayment> early) {

    /**
     * What is enough for an invoice if it is paid early.
     *
     * @param until the last day on which it is
     * @param off what is taken off
     * @param tax that is due then
     * @param gross what is paid then
     */
    public record EarlyPayment(Effect effect, Percent percent, LocalDate until, MonetaryAmount off, Explanation how,
            MonetaryAmount tax, MonetaryAmount gross, Explanation grossHow) {

        /** What it is taken off, and what becomes of the tax. */
        public enum Effect {
            /** Off the sum before tax; the tax stays. */
            NET,
            /** Off the sum with its tax, which stays. */
            GROSS,
            /** Off the sum before tax, and the tax is of what is left. */
            TAX_TOO
        }

        /** What becomes of an account by it. */
        private Invoiced.Early taken(Totals totals) {
            return new Invoiced.Early(until, totals.gross().subtract(gross), totals.tax().subtract(tax));
        }

        /** The same, so many days later. */
        EarlyPayment later(long days) {
            return new EarlyPayment(effect, percent, until.plusDays(days), off, how, tax, gross, grossHow);
        }

        /** The terms in one sentence. */
        public Phrase said() {
            Fact part = new Fact.Part(percent);
            Fact less = new Fact.Amount(off);
            Fact all = new Fact.Amount(gross);
            Fact day = new Fact.Day(until);
            return switch (effect) {
            case NET -> Phrase.of("early.net", day, part, less, new Fact.Amount(tax), all);
            case GROSS -> Phrase.of("early.gross", day, part, less, all);
            case TAX_TOO -> Phrase.of("early.tax-too", day, part, less, new Fact.Amount(tax), all);
            };
        }
    }

    /** A discount on the whole document; the amount is positive. */
    public record Discount(Phrase text, MonetaryAmount amount, Explanation how) {}

    public Totals {
        taxes = List.copyOf(taxes);
    }

    /** Without anything for paying early. */
    public Totals(MonetaryAmount lines, Optional<Discount> discount, MonetaryAmount net, TaxPlace taxPlace,
            List<TaxTotal> taxes, MonetaryAmount tax, MonetaryAmount gross) {
        this(lines, discount, net, taxPlace, taxes, tax, gross, Optional.empty());
    }

    public Totals offering(EarlyPayment payment) {
        return new Totals(lines, discount, net, taxPlace, taxes, tax, gross, Optional.of(payment));
    }

    /** What is taken off on the customer's account, where enough comes early. */
    public Optional<Invoiced.Early> takenEarly() {
        return early.map(payment -> payment.taken(this));
    }

    /**
     * The same of an invoice that is issued anew, so many days later; without what it took off for paying early where that day is
     * past.
     */
    public Totals anew(LocalDate date, long days) {
        return new Totals(lines, discount, net, taxPlace, taxes, tax, gross,
                early.map(payment -> payment.later(days)).filter(payment -> !payment.until().isBefore(date)));
    }
}
