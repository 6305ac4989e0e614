package icequill.tax;

import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.party.Certificate;
import icequill.party.Customer;
import icequill.party.TaxBasis;
import icequill.pricer.PricedLine;
import icequill.pricer.PricedVisit;
import icequill.tax.TaxPlace.Rule;
import icequill.work.ChargeClass;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/** Taxes priced visits. Stateless. */
public final class TaxCalculator {

    private TaxCalculator() {
    }

    /**
     * The visit with its taxes. A certificate that has expired, is not yet signed or is missing means that tax is due, and a
     * remark says so.
     *
     * @param place where the machine stands, or the shop's if the shop is set so
     * @param basis the shop's choice; VAT is always figured by invoice
     * @param day on which the certificate must hold: that of the visit
     */
    public static TaxedVisit tax(PricedVisit priced, TaxPlace place, TaxBasis basis, Customer customer, LocalDate day) {
        Exemption exemption = Exemption.of(customer, place, day);
        boolean partsFurnished = priced.furnishes();
        List<LineTax> lines = IntStream.range(0, priced.lines().size())
                .mapToObj(i -> line(priced, i, place, exemption, partsFurnished)).toList();
        List<Taxable> taxables = lines.stream()
                .flatMap(line -> line.taxable().stream()).toList();
        Stream<Phrase> shown = lines.stream().anyMatch(line -> line.shown().isPresent())
                ? Stream.of(Phrase.of("remark.prices-include-tax"))
                : Stream.of();
        return new TaxedVisit(priced, place, lines, TaxTotals.of(taxables, place.basis(basis), priced.currency()),
                Stream.concat(exemption.remarks(priced.lines().stream().map(PricedLine::chargeClass).toList()).stream(),
                        shown).toList());
    }

    private static LineTax line(PricedVisit priced, int index, TaxPlace place, Exemption exemption,
            boolean partsFurnished) {
        PricedLine line = priced.lines().get(index);
        MonetaryAmount share = priced.share(index);
        Figure base = share.isZero()
                ? Figure.price(line.net(), "")
                : Figure.price(line.net(), "").minus(Figure.price(share, ""));
        Explanation how = share.isZero() ? Explanation.of(base) : Explanation.of(base, Phrase.of("reason.share"));
        Rule rule = place.rule(line.chargeClass());
        if (line.isPaidAhead() || (line.isSoldAhead() && place.blocks() == BlockTax.AT_USE)) {
            return new LineTax(how.amount(priced.currency()), how, Optional.empty(),
                    Phrase.of(line.isPaidAhead() ? "tax.paid-ahead" : "tax.at-use"), Optional.empty());
        }
        Verdict usual = Verdict.of(rule, line.chargeClass(), place.regime(), partsFurnished);
        Verdict verdict = exemption.best(line.chargeClass())
                .map(held -> usual.under(held.certificate(), held.relief(), line.chargeClass())).orElse(usual);
        return new LineTax(how.amount(priced.currency()), how, verdict.rate(), verdict.why(),
                verdict.rate().filter(rate -> rate.category().isTaxed() && rate.equals(rule.rate()))
                        .flatMap(rate -> priced.shown().stream().skip(index).findFirst()));
    }

    /** The rate that applies to a line, and why. */
    private record Verdict(Optional<TaxRate> rate, Phrase why) {

        static Verdict of(Rule rule, ChargeClass chargeClass, TaxPlace.Regime regime, boolean partsFurnished) {
            Fact name = chargeClass.word();
            Fact total = new Fact.Part(rule.rate().total());
            return switch (rule.taxability()) {
            case TAXABLE -> new Verdict(Optional.of(rule.rate()), Phrase.of("tax.taxed", total));
            case EXEMPT -> regime == TaxPlace.Regime.VAT
                    ? new Verdict(Optional.of(rule.rate()), rule.rate().untaxed())
                    : new Verdict(Optional.empty(), untaxed(rule.rate(), name));
            case TAXABLE_IF_PARTS_ON_VISIT -> partsFurnished
                    ? new Verdict(Optional.of(rule.rate()), Phrase.of("tax.parts-on-visit", total))
                    : new Verdict(Optional.empty(), Phrase.of("tax.no-parts-on-visit", name));
            case SELLER_CONSUMES -> new Verdict(Optional.empty(), Phrase.of("tax.seller-consumes", name));
            };
        }

        /** The same for a customer with a certificate, as far as it reaches; of what is not taxed anyway only one that frees all. */
        Verdict under(Certificate held, Reliefs.Relief relief, ChargeClass chargeClass) {
            Optional<TaxRate> taxed = rate.filter(found -> found.category().isTaxed());
            Fact number = new Fact.Text(held.number());
            if (taxed.isEmpty()) {
                return relief.isFor(chargeClass) && relief.taxed().isEmpty() ? exempt(held) : this;
            }
            TaxRate due = taxed.get();
            Fact percent = new Fact.Part(due.total());
            if (!relief.isFor(chargeClass)) {
                return new Verdict(rate, Phrase.of("tax.not-of-certificate", percent, number, chargeClass.word()));
            }
            return relief.taxed()
                    .map(share -> new Verdict(Optional.of(due.onShare(share)),
                            Phrase.of("tax.share-of-certificate", percent, new Fact.Part(share), number)))
                    .orElseGet(() -> exempt(held));
        }

        private static Verdict exempt(Certificate certificate) {
            return new Verdict(Optional.empty(),
                    Phrase.of("tax.exempt-certificate", new Fact.Text(certificate.number()),
                            new Fact.Day(certificate.signed())));
        }

        private static Phrase untaxed(TaxRate rate, Fact chargeClass) {
            return rate.reason().map(reason -> rate.untaxed())
                    .orElseGet(() -> Phrase.of("tax.exempt-class", chargeClass));
        }
    }
}
