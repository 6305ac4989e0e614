package icequill.shop;

import icequill.files.form.Form;
import icequill.files.form.FormKind;
import icequill.files.form.SiteReader;
import icequill.files.form.StoredForms;
import icequill.files.yaml.Fields;
import icequill.party.Customer;
import icequill.party.Site;
import icequill.party.SiteKinds;
import icequill.problem.Place;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Sites by their forms: those that were handed over, before those of the book.
 *
 * @param kinds that there are for the shop
 * @param customers who pay for them
 */
record SiteForms(FormFinder finder, SiteKinds kinds, CustomerForms customers) {

    private static final String CUSTOMER = "customer";

    /** For sites and machines that stand in no file; what is wrong with them is collected with all else. */
    StoredForms stored() {
        return new StoredForms(kinds, finder.problems(), finder.note());
    }

    /**
     * Reads a site.
     *
     * @param day on which it is asked for whose it was; empty for now
     * @param asked where it is named
     */
    Optional<Site> site(String id, Optional<LocalDate> day, Place asked) {
        Optional<Form> form = finder.given(FormKind.SITE, id);
        return form.isPresent()
                ? form.flatMap(this::site)
                : finder.problems().take(finder.book().site(id, day)).flatMap(stored -> stored.isPresent()
                        ? stored().site(stored.get())
                        : finder.unknown(List.of(FormKind.SITE), id, asked));
    }

    /** A site from its form, with whoever pays: he stands there, or is named. */
    Optional<Site> site(Form form) {
        Optional<Fields> fields = stored().site(form.tree());
        Optional<Customer> payer = fields.flatMap(this::payer);
        return fields
                .flatMap(found -> new SiteReader(found, kinds).read(form.id(), payer.orElse(SiteReader.UNKNOWN))
                        .map(site -> site.of(accounts(found))))
                .filter(site -> payer.isPresent());
    }

    /** Of a customer who is named; one who is handed over with the site may not be in the book yet. */
    private List<String> accounts(Fields site) {
        return site.text(CUSTOMER).map(id -> finder.book().accounts(id).found().orElse(List.of(id))).orElse(List.of());
    }

    private Optional<Customer> payer(Fields site) {
        return site.child(CUSTOMER).isPresent()
                ? site.child(CUSTOMER).flatMap(who -> customers.stored().customer(who.branch()))
                : site.text(CUSTOMER).flatMap(id -> customers.customer(id, site.place(CUSTOMER)));
    }
}
