package icequill.tax;

import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.money.Percent;
import icequill.money.Rounding;
import icequill.party.TaxBasis;
import icequill.problem.Check;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * The price of a work with its tax, asked for in parts. All parts together are the whole, before tax and with it, to the minor unit.
 *
 * @param net before tax
 * @param taxes by rate; their bases are the net, or less where a part of it is not taxed
 * @param advances when deposits and what is held back are taxed
 */
public record StagedPrice(MonetaryAmount net, List<TaxTotal> taxes, Advances advances) {

    public StagedPrice {
        taxes = List.copyOf(taxes);
    }

    /** A deposit of so much of the net, with its tax where the place taxes it then; and the whole less the deposit. */
    public List<Stage> deposit(Percent share) {
        StagedBases.Part part = bases().next(List.of(), base -> rounded(share, base, Rounding.DEPOSIT));
        List<MonetaryAmount> bases = part.bases();
        boolean taxed = advances.deposits() == Advances.Deposits.AT_DEPOSIT;
        List<TaxTotal> asked = taxed ? further(List.of(), bases, false) : List.of();
        MonetaryAmount deposit = sum(bases);
        Stage first = stage(Stage.Kind.DEPOSIT, share, deposit, asked, zero(), plus(part.figure(), asked),
                Phrase.of(taxed ? "reason.deposit-taxed" : "reason.deposit-untaxed", new Fact.Part(share)));
        List<TaxTotal> left = further(asked, List.of(), true);
        return List.of(first, stage(Stage.Kind.FINAL, rest(share), net.subtract(deposit), left, zero(),
                plus(Figure.price(net, ""), taxes).minus(Figure.price(first.due(), "")),
                Phrase.of("reason.stage-final", new Fact.Amount(first.net()), new Fact.Amount(first.tax()))));
    }

    /**
     * Parts of so much of the net each, of which something is held back until the end.
     *
     * @param shares that add up to 100 %
     * @param retainage that is held back of each part before tax; 0 for none
     */
    public List<Stage> progress(List<Percent> shares, Percent retainage) {
        Check.that(shares.stream().reduce(Percent.ZERO, Percent::plus).equals(Percent.HUNDRED), "shares " + shares);
        boolean atRelease = advances.retainages() == Advances.Retainages.AT_RELEASE && !retainage.isZero();
        List<Stage> stages = new ArrayList<>();
        List<StagedBases.Part> parts = new ArrayList<>();
        List<TaxTotal> asked = new ArrayList<>();
        for (int i = 0; i < shares.size(); i++) {
            int index = i;
            StagedBases.Part part = bases().next(parts, base -> share(base, shares, index));
            parts.add(part);
            List<MonetaryAmount> bases = part.bases();
            Figure held = rounded(retainage, sum(bases), Rounding.RETAINAGE);
            boolean isLast = i == shares.size() - 1 && !atRelease;
            List<TaxTotal> taxed = further(asked,
                    atRelease ? less(bases, amount(held)) : bases, isLast);
            asked.addAll(taxed);
            Figure due = plus(part.figure(), taxed);
            stages.add(stage(Stage.Kind.PROGRESS, shares.get(i), sum(bases), taxed, amount(held),
                    retainage.isZero() ? due : due.minus(held),
                    Phrase.of("reason.stage-progress", new Fact.Part(shares.get(i)))));
        }
        if (!retainage.isZero()) {
            stages.add(release(stages, asked, retainage, atRelease));
        }
        return List.copyOf(stages);
    }

    private Stage release(List<Stage> stages, List<TaxTotal> asked, Percent retainage, boolean taxed) {
        Figure held = stages.stream().map(stage -> Figure.price(stage.held(), "")).reduce(Figure::plus).orElseThrow();
        List<TaxTotal> taxes = taxed ? further(asked, List.of(), true) : List.of();
        return stage(Stage.Kind.RELEASE, retainage, zero(), taxes, amount(held).negate(), plus(held, taxes),
                Phrase.of("reason.stage-release", new Fact.Part(retainage)));
    }

    /** What is at each rate, and at last what is at none, if anything is. */
    private StagedBases bases() {
        List<MonetaryAmount> bases = new ArrayList<>(taxes.stream().map(TaxTotal::base).toList());
        MonetaryAmount untaxed = net.subtract(sum(bases));
        if (bases.isEmpty() || !untaxed.isZero()) {
            bases.add(untaxed);
        }
        return new StagedBases(bases, currency());
    }

    /**
     * The tax of a part at each rate.
     *
     * @param before what was asked for already
     * @param bases of the part; of no account for the last
     * @param isLast whether it takes all that is left
     */
    private List<TaxTotal> further(List<TaxTotal> before, List<MonetaryAmount> bases, boolean isLast) {
        List<TaxTotal> all = new ArrayList<>();
        for (int i = 0; i < taxes.size(); i++) {
            TaxTotal whole = taxes.get(i);
            TaxCredit left = new TaxCredit(whole,
                    before.stream().filter(total -> total.rate().equals(whole.rate())).toList(), "stage");
            MonetaryAmount base = isLast ? left.left() : bases.get(i);
            // What is taken back in whole goes with the last part, since a part of it cannot be asked for.
            if (!base.isZero() && (isLast || left.allows(base))) {
                MonetaryAmount gone = sum(left.notes().stream().map(TaxTotal::base).toList());
                all.add(left.further(List.of(TaxedPart.of(whole, base, gone)), TaxBasis.INVOICE));
            }
        }
        return all;
    }

    /** Bases less what is held back of all of them together. */
    private List<MonetaryAmount> less(List<MonetaryAmount> bases, MonetaryAmount held) {
        List<BigDecimal> weights = bases.stream().map(base -> Amounts.number(base).max(BigDecimal.ZERO)).toList();
        if (weights.stream().allMatch(weight -> weight.signum() == 0)) {
            return bases;
        }
        List<MonetaryAmount> all = new ArrayList<>();
        for (int i = 0; i < bases.size(); i++) {
            all.add(bases.get(i).subtract(amount(new Figure.Share(new BigDecimal(Amounts.plain(held)), weights, i,
                    decimals()))));
        }
        return all;
    }

    private Stage stage(Stage.Kind kind, Percent share, MonetaryAmount part, List<TaxTotal> taxed, MonetaryAmount held,
            Figure figure, Phrase why) {
        MonetaryAmount tax = sum(taxed.stream().map(TaxTotal::tax).toList());
        Explanation how = Explanation.of(figure, why);
        return new Stage(kind, share, part, taxed, tax, held, how.amount(currency()), how);
    }

    private Figure share(MonetaryAmount base, List<Percent> shares, int index) {
        return new Figure.Share(new BigDecimal(Amounts.plain(base)), shares.stream().map(Percent::value).toList(),
                index, decimals());
    }

    private Figure rounded(Percent share, MonetaryAmount base, Rounding rounding) {
        return Figure.percent(share).times(Figure.price(base, "")).rounded(rounding, currency());
    }

    private static Figure plus(Figure figure, List<TaxTotal> taxed) {
        return taxed.stream().map(total -> Figure.price(total.tax(), "")).reduce(figure, Figure::plus);
    }

    private static Percent rest(Percent share) {
        return new Percent(Percent.HUNDRED.value().subtract(share.value()));
    }

    private MonetaryAmount amount(Figure figure) {
        return new Explanation(figure, List.of()).amount(currency());
    }

    private MonetaryAmount sum(List<MonetaryAmount> amounts) {
        return Amounts.sum(amounts, currency());
    }

    private MonetaryAmount zero() {
        return Amounts.zero(currency());
    }

    private CurrencyUnit currency() {
        return net.getCurrency();
    }

    private int decimals() {
        return currency().getDefaultFractionDigits();
    }
}
