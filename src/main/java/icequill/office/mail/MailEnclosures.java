package icequill.office.mail;

import icequill.files.form.MailSettings;
import icequill.files.form.MailSettings.Standing;
import icequill.ledger.papers.PaperKind;
import icequill.mail.Enclosure;
import icequill.office.care.PaperOffice;
import icequill.party.MailWishes;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.ShopBook;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What goes along with a mail: the paper, as the customer's gateway allows it, and what he wants beside.
 *
 * @param today for papers that expire
 */
record MailEnclosures(ShopBook book, MailSettings settings, LocalDate today) {

    static final String PDF = "application/pdf";
    private static final String XML = "application/xml";
    private static final Set<PaperKind> BILLS = EnumSet.of(PaperKind.INVOICE, PaperKind.CREDIT_NOTE);

    /** Whether a paper asks for money or gives it back. */
    static boolean isBill(PaperKind kind) {
        return BILLS.contains(kind);
    }

    /**
     * The files of a paper of the book.
     *
     * @param name of them, without an end
     */
    Validated<List<Enclosure>> of(String number, PaperKind kind, MailWishes wishes, String name) {
        PaperOffice office = PaperOffice.of(book);
        Problems problems = new Problems();
        List<Enclosure> files = new ArrayList<>();
        problems.take((wishes.bare() ? office.bare(number) : office.file(number))
                .then(file -> file(name + ".pdf", PDF, file.pdf().bytes()))).ifPresent(files::add);
        if (wishes.data() && isBill(kind)) {
            problems.take(office.ubl(number).then(
                    file -> file(name + ".xml", XML, file.getValue().getBytes(StandardCharsets.UTF_8))))
                    .ifPresent(files::add);
        }
        return problems.or(() -> files);
    }

    private static Validated<Enclosure> file(String name, String mediaType, byte[] bytes) {
        return Enclosure.of(name, mediaType, bytes, Place.NOWHERE);
    }

    /** The papers of the shop that the customer wants with his bills. */
    Validated<List<Standing>> standing(PaperKind kind, MailWishes wishes) {
        Problems problems = new Problems();
        List<Standing> found = isBill(kind)
                ? wishes.enclosed().stream().flatMap(name -> problems.take(standing(name)).stream()).toList()
                : List.of();
        return problems.or(() -> found);
    }

    private Validated<Standing> standing(String name) {
        Optional<Standing> known = settings.standing().stream().filter(each -> each.name().equals(name)).findFirst();
        Place place = new Place("shop.yaml", 0, "mail.standing");
        if (known.isEmpty()) {
            return Validated
                    .invalid(new Problem(Code.UNKNOWN_NAME, place, "there is no standing paper \"" + name + "\"",
                            "one that shop.yaml lists under mail"));
        }
        return known.get().expires().filter(today::isAfter)
                .map(last -> Validated.<Standing>invalid(new Problem(Code.CERTIFICATE, place,
                        "the standing paper \"" + name + "\" expired on " + last, "a newer one, with its last day")))
                .orElseGet(() -> Validated.valid(known.get()));
    }

    /** The file of one of them. */
    Validated<Enclosure> read(Standing standing) {
        Path file = book.folder().resolve(standing.file());
        try {
            return file(file.getFileName().toString(), PDF, Files.readAllBytes(file));
        } catch (IOException unreadable) {
            return Validated.invalid(new Problem(Code.UNREADABLE, Place.ofFile(file.toString()),
                    "the standing paper \"" + standing.name() + "\" cannot be read", "a PDF in the shop folder"));
        }
    }
}
