package icequill.office.register;

import icequill.answer.ImportResult;
import icequill.ledger.Transaction;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.entries.SiteEntry;
import icequill.problem.Checked;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.shop.EntryRows;
import icequill.shop.ExistingEntries;
import icequill.shop.GlyphCheck;
import icequill.shop.ShopBook;
import icequill.shop.ShopDay;
import icequill.shop.ShopFolder;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;

/** The office that takes lists of customers, sites and machines into the book: all of them, or none. */
public final class ImportOffice {

    private final Path folder;
    private final ShopBook book;
    private final LocalDate today;

    private ImportOffice(Path folder, Clock clock) {
        this.folder = folder;
        this.book = ShopBook.of(folder, clock);
        this.today = ShopDay.today(folder, clock);
    }

    public static ImportOffice of(Path folder, Clock clock) {
        return new ImportOffice(folder, clock);
    }

    /**
     * Takes the lists in. A row whose id the book has changes what the cells say; any other adds.
     *
     * @param dryRun whether to look only
     */
    public Checked<ImportResult> run(Optional<Path> customers, Optional<Path> sites, Optional<Path> machines,
            boolean dryRun) {
        if (customers.isEmpty() && sites.isEmpty() && machines.isEmpty()) {
            return Checked.faulty(new Problem(Code.MISSING, Place.NOWHERE, "no list is given",
                    "--customers, --sites or --machines with a CSV file"));
        }
        ShopFolder shop = ShopFolder.read(folder);
        Problems problems = new Problems();
        ImportLists lists = ImportLists.read(customers, sites, machines, problems);
        Checked<ExistingEntries> before = book.exists()
                ? book.read(open -> Checked.sound(ExistingEntries.of(open)))
                : Checked.sound(ExistingEntries.EMPTY);
        return before.then(known -> {
            ImportPlan plan = ImportPlan.of(folder, shop, known, lists, today, problems);
            return GlyphCheck.report(shop, problems).or(() -> plan)
                    .then(sound -> dryRun
                            ? Checked.sound(counted(lists, known, true))
                            : book.write(open -> stored(open, sound).map(done -> counted(lists, known, false))));
        });
    }

    private static Checked<Boolean> stored(Transaction open, ImportPlan plan) {
        EntryRows rows = new EntryRows(open);
        Problems problems = new Problems();
        for (CustomerEntry customer : plan.customers()) {
            problems.take(rows.customer(customer.id(), customer.customer(), customer.parent()));
        }
        plan.sites().forEach(site -> {
            Checked<SiteEntry> stored = rows.site(site.customer(), site.whole());
            problems.addAll(stored.problems());
        });
        return problems.or(() -> true);
    }

    private static ImportResult counted(ImportLists lists, ExistingEntries before, boolean dryRun) {
        int changed = Math.toIntExact(
                lists.customers().keySet().stream().filter(before.customers()::containsKey).count()
                        + lists.sites().keySet().stream().filter(before.sites()::containsKey).count()
                        + lists.machines().keySet().stream().filter(before::hasMachine).count());
        return new ImportResult(lists.customers().size(), lists.sites().size(), lists.machines().size(), changed,
                dryRun);
    }
}
