package icequill.office.letters;

import icequill.answer.WrittenPaper;
import icequill.document.Paper;
import icequill.document.RenewalNotice;
import icequill.document.ServiceAgreement;
import icequill.document.VisitAnnouncement;
import icequill.document.VisitRecord;
import icequill.life.mail.MailTells;
import icequill.party.Contact;
import icequill.party.Site;
import icequill.problem.Problem;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * A paper that bears no number, before it is written.
 *
 * @param name of its files, without the ending
 * @param customer by id; empty where nobody of the book stands behind it
 * @param site by id; empty where it is about all of a customer's
 * @param customerName as reports call him
 * @param notices what its reader is to know besides
 */
public record LoosePaper(String name, Paper paper, Optional<String> customer, Optional<String> site,
        String customerName, List<Problem> notices) {

    public LoosePaper {
        notices = List.copyOf(notices);
    }

    /** One about a site. */
    public static LoosePaper at(Site site, String name, Paper paper) {
        return new LoosePaper(name, paper, site.accounts().stream().findFirst(), Optional.of(site.id()),
                site.customer().name(), List.of());
    }

    /** What is told of it once it is written. */
    WrittenPaper written(List<Path> files) {
        return WrittenPaper.of(files, paper, customerName, notices);
    }

    /** For what those are there who get it. */
    Contact.Purpose purpose() {
        return switch (paper) {
        case VisitRecord record -> Contact.Purpose.VISITS;
        case VisitAnnouncement visit -> Contact.Purpose.VISITS;
        case ServiceAgreement agreement -> Contact.Purpose.RENEWALS;
        case RenewalNotice notice -> Contact.Purpose.RENEWALS;
        default -> Contact.Purpose.BILLS;
        };
    }

    /** What its customer knows once he has it. */
    Optional<MailTells> tells() {
        return switch (paper) {
        case RenewalNotice notice -> Optional.of(new MailTells.OfRenewal(notice.agreement()));
        case VisitAnnouncement visit -> Optional.of(new MailTells.OfVisit(visit.visit(),
                visit.begins().toLocalDateTime(), visit.ends().toLocalDateTime()));
        default -> Optional.empty();
        };
    }
}
