package icequill.office.writing;

import icequill.document.RepairQuote;
import icequill.files.form.FormKind;
import icequill.papers.RepairQuoteAssembly;
import icequill.party.BillTo;
import icequill.party.Language;
import icequill.party.Machine;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.request.PaperOptions;
import icequill.shop.FormName;
import icequill.shop.GlyphCheck;
import icequill.shop.ShopFolder;
import icequill.shop.VisitLoader;
import icequill.visits.VisitContext;
import icequill.work.Finding;
import icequill.work.Proposal;
import icequill.work.Visit;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Quotes a repair: checks that what the request names is there, and puts the paper together. */
public record RepairQuoting(Path folder, ShopFolder shop, VisitContext hand, BillTo billTo, Language language) {

    /** Reads and prices what is to be quoted, at the prices of the quote's own date. */
    public static Validated<RepairQuoting> of(Path folder, ShopFolder shop, FormName name, PaperOptions options) {
        return new VisitLoader(shop).of(name, visit -> options.date())
                .then(hand -> hand.site().billTo(options.date())
                        .map(billTo -> new RepairQuoting(folder, shop, hand, billTo,
                                hand.language(options.language()))));
    }

    /** The quote, or all that its request has wrong. */
    public Validated<RepairQuote> quote(PaperOptions options) {
        Optional<Proposal> proposal = hand.visit().proposal();
        if (proposal.isEmpty()) {
            return Validated.invalid(new Problem(Code.MISSING, hand.visit().place(), "\"quote\" is missing",
                    "what is to be quoted: quote: {machine: ..., work: ...}"));
        }
        Problems problems = new Problems();
        Optional<Machine> machine = machine(proposal.get(), problems);
        Optional<Visit> found = proposal.get().found().flatMap(from -> found(proposal.get(), from, problems));
        return GlyphCheck.report(shop, problems).or(() -> new RepairQuoteAssembly(hand, proposal.get(),
                machine.orElseThrow(), found, billTo, language).quote(options.number(), options.date()));
    }

    private Optional<Machine> machine(Proposal proposal, Problems problems) {
        Optional<Machine> machine = hand.site().machine(proposal.machine());
        if (machine.isEmpty()) {
            problems.add(Problem.unknownName(proposal.place(), "machine", proposal.machine(),
                    hand.site().machines().stream().map(Machine::id).toList()));
        }
        return machine;
    }

    private Optional<Visit> found(Proposal proposal, Proposal.Found from, Problems problems) {
        Optional<Visit> visit = shop
                .form(FormName.in(folder, from.visit()), List.of(FormKind.VISIT, FormKind.PLANNED_VISIT))
                .flatMap(shop.contents()::visit);
        visit.ifPresent(read -> {
            Place place = from.place();
            if (!read.site().equals(hand.site().id())) {
                problems.add(Code.NOT_ALLOWED, place, "that visit was at " + read.site(),
                        "a visit at " + hand.site().id());
                return;
            }
            List<String> recommended = read.findings().stream()
                    .filter(finding -> finding.machine().equals(proposal.machine()))
                    .flatMap(finding -> finding.recommendations().stream()).map(Finding.Recommendation::text).toList();
            if (!recommended.contains(from.recommended())) {
                problems.add(Problem.unknownName(place, "recommended repair", from.recommended(), recommended));
            }
        });
        return visit;
    }
}
