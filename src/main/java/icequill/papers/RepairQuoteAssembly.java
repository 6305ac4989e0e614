package icequill.papers;

import icequill.document.RepairQuote;
import icequill.document.ServicePeriod;
import icequill.document.Totals;
import icequill.explain.Explanation;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Rounding;
import icequill.party.BillTo;
import icequill.party.Language;
import icequill.party.Machine;
import icequill.party.Site;
import icequill.visits.ChargeSheet;
import icequill.visits.VisitContext;
import icequill.work.Finding;
import icequill.work.Proposal;
import icequill.work.Visit;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * Puts a repair quote together from the planned visit, priced and taxed, and from the visit that recommended it.
 *
 * @param found the visit that recommended the repair, if there was one
 */
public record RepairQuoteAssembly(VisitContext hand, Proposal proposal, Machine machine, Optional<Visit> found,
        BillTo billTo, Language language) {

    public RepairQuote quote(Optional<String> number, LocalDate date) {
        ChargeSheet sheet = new ChargeSheet(hand.site(), hand.taxed());
        Totals totals = sheet.totals();
        return new RepairQuote(number, date, date.plusDays(proposal.holdsDays()), hand.shop(), language,
                hand.shop().paper(), billTo, hand.site().customer().vendorNumber(), served(), machine,
                found.map(this::found), proposal.work(), sheet.lines(), totals, deposit(totals.gross()),
                hand.taxed().remarks());
    }

    private ServicePeriod served() {
        Site site = hand.site();
        Visit planned = hand.visit();
        return new ServicePeriod(site.name(), site.storeNumber(), site.address(), planned.order().purchaseOrder(),
                planned.began().toLocalDate(), planned.ended().toLocalDate());
    }

    private RepairQuote.Found found(Visit visit) {
        List<Finding> there = visit.findings().stream().filter(finding -> finding.machine().equals(machine.id()))
                .toList();
        return new RepairQuote.Found(visit.day(), there.stream().flatMap(finding -> finding.complaint().stream())
                .findFirst(), there.stream().flatMap(finding -> finding.cause().stream()).findFirst(),
                proposal.found().orElseThrow().recommended());
    }

    private Optional<RepairQuote.Deposit> deposit(MonetaryAmount gross) {
        if (proposal.deposit().isZero() || gross.isZero()) {
            return Optional.empty();
        }
        Explanation how = Explanation.of(Figure.percent(proposal.deposit()).times(Figure.price(gross, ""))
                .rounded(Rounding.DEPOSIT, gross.getCurrency()), Phrase.of("reason.deposit"));
        MonetaryAmount amount = how.amount(gross.getCurrency());
        return Optional.of(new RepairQuote.Deposit(proposal.deposit(), amount, how, gross.subtract(amount)));
    }
}
