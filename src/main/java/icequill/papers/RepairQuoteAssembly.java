package icequill.papers;

import icequill.document.RepairQuote;
import icequill.document.ServicePeriod;
import icequill.document.Totals;
import icequill.party.BillTo;
import icequill.party.Language;
import icequill.party.Machine;
import icequill.party.Site;
import icequill.tax.Stage;
import icequill.tax.StagedPrice;
import icequill.visits.ChargeSheet;
import icequill.visits.VisitContext;
import icequill.work.Finding;
import icequill.work.Proposal;
import icequill.work.Visit;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

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
        List<Stage> stages = stages(totals);
        return new RepairQuote(number, date, date.plusDays(proposal.holdsDays()), hand.shop(), language,
                hand.shop().paper(), billTo, hand.site().customer().vendorNumber(), served(), machine,
                found.map(this::found), proposal.work(), sheet.lines(), totals, deposit(stages),
                Optional.of(stages).filter(parts -> !parts.isEmpty()).map(RepairQuote.InParts::new),
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

    private List<Stage> stages(Totals totals) {
        StagedPrice price = new StagedPrice(totals.net(), totals.taxes(), totals.taxPlace().advances());
        if (!totals.net().isPositive()) {
            return List.of();
        }
        if (!proposal.stages().isEmpty()) {
            return price.progress(proposal.stages(), proposal.retainage());
        }
        return proposal.deposit().isZero() ? List.of() : price.deposit(proposal.deposit());
    }

    private Optional<RepairQuote.Deposit> deposit(List<Stage> stages) {
        return stages.stream().filter(stage -> stage.kind() == Stage.Kind.DEPOSIT).findFirst()
                .map(stage -> new RepairQuote.Deposit(stage.share(), stage.due(), stage.how(),
                        stages.getLast().due()));
    }
}
