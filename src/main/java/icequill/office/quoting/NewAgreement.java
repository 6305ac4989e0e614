package icequill.office.quoting;

import icequill.files.form.Form;
import icequill.ledger.entries.AgreementEntry;
import icequill.office.billing.InvoicedPayments;
import icequill.party.Site;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.AgreementLoader;
import icequill.shop.AgreementsInForce;
import icequill.shop.GlyphCheck;
import icequill.shop.ShopBook;
import icequill.shop.ShopFolder;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** An agreement that comes into the book by what was agreed, and not by hand. */
public final class NewAgreement {

    private NewAgreement() {
    }

    /**
     * The agreement as the book stores it, or all that is wrong with it.
     *
     * @param day as of which it is priced
     */
    public static Validated<AgreementEntry> of(ShopBook book, ShopFolder shop, Form form, LocalDate day) {
        Problems problems = new Problems();
        Optional<AgreementEntry> entry = new AgreementLoader(shop, new InvoicedPayments(book)::of)
                .read(form, day, problems).map(hand -> {
                    LocalDate start = hand.request().firstDay();
                    twice(shop, hand.request().number(), hand.request().machines(hand.site(), start), hand.site(),
                            start)
                            .forEach(message -> problems.add(Code.NOT_ALLOWED, new Place("", 0, "start"), message,
                                    "a later first day, or that agreement as the one that the quote became"));
                    return new AgreementEntry(form.id(), hand.request().number(), hand.site().id(), form.data());
                });
        return GlyphCheck.report(shop, problems).or(entry::orElseThrow);
    }

    /** That machines are looked after under other agreements on a day already, by their ids. */
    public static List<String> twice(ShopFolder shop, String agreement, Set<String> machines, Site site,
            LocalDate day) {
        List<String> found = new ArrayList<>();
        new AgreementsInForce(shop).requests(site, day).filter(other -> !other.number().equals(agreement))
                .forEach(other -> {
                    Set<String> both = new TreeSet<>(other.machines(site, day));
                    both.retainAll(machines);
                    if (!both.isEmpty()) {
                        found.add("on " + day + " agreement " + other.number() + " looks after "
                                + String.join(", ", both) + " already");
                    }
                });
        return found;
    }
}
