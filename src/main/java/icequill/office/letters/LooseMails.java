package icequill.office.letters;

import icequill.answer.WrittenPaper;
import icequill.answer.mail.MailList;
import icequill.answer.mail.MailSheet;
import icequill.answer.mail.MailTelling;
import icequill.files.form.MailSettings;
import icequill.ledger.Reading;
import icequill.ledger.entries.LifeStep;
import icequill.ledger.entries.MailFile;
import icequill.ledger.papers.Pdf;
import icequill.life.mail.MailLetter;
import icequill.life.mail.MailMatter.Loose;
import icequill.office.writing.MailDesk;
import icequill.office.writing.PaperWriter;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.request.Extras;
import icequill.shop.ShopBook;
import icequill.shop.life.MailLife;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Writes mails about papers that bear no number: what lies in papers/ goes along, and is kept in the book from then on. */
public record LooseMails(ShopBook book) {

    private static final String PDF = "application/pdf";
    private static final String END = ".pdf";

    /**
     * Writes a paper into papers/, in place of an earlier one, and where that is asked for a mail about it. Where the mail cannot be
     * written, the paper is not either.
     */
    public Validated<WrittenPaper> write(LoosePaper paper, Extras extras) {
        return (extras.mail() ? mailable(paper) : Validated.valid(paper))
                .then(valid -> new PaperWriter(book).write(paper.paper(), paper.name(),
                        extras.mail() ? fitting(paper, extras) : extras))
                .map(paper::written).then(written -> extras.mail() ? mailed(paper, written) : Validated.valid(written));
    }

    /** That somebody gets it, and no other mail about it is on its way. */
    private Validated<LoosePaper> mailable(LoosePaper paper) {
        return customer(paper).then(customer -> LooseWords.of(paper.paper()).then(letter -> book.read(open -> {
            Problems problems = new Problems();
            problems.take(assembly().parties(open, customer, paper.site(), paper.purpose(), letter.printed()));
            Repeat.of(before(open, paper), new MailDesk(book).now(), true).ifPresent(problems::add);
            return problems.or(() -> paper);
        })));
    }

    /** Without files within, where the customer's gateway holds back what carries them. */
    private Extras fitting(LoosePaper paper, Extras extras) {
        boolean bare = extras.bare() || paper.customer().flatMap(customer -> book.read(
                open -> open.entries().customerNow(customer).map(entry -> entry.customer().mail().bare())).found())
                .orElse(false);
        return new Extras(extras.html(), extras.xml(), bare, extras.mail());
    }

    private static Validated<String> customer(LoosePaper paper) {
        return paper.customer().map(Validated::valid).orElseGet(
                () -> Validated.invalid(new Problem(Code.MISSING, Place.NOWHERE,
                        "nobody of the book stands behind the paper", "a paper for a customer of the book")));
    }

    private LooseAssembly assembly() {
        return new LooseAssembly(book, MailSettings.of(book.folder()), MailTelling.of(book).here());
    }

    private Validated<WrittenPaper> mailed(LoosePaper paper, WrittenPaper written) {
        return file(written).then(file -> book.write(open -> first(open, paper, written.name(), file).map(step -> {
            open.lifeSteps().add(step);
            open.mailFiles().keep(step.id(), file);
            return written.by(step.id());
        })));
    }

    private static Validated<MailFile> file(WrittenPaper written) {
        try {
            return Validated.valid(MailFile.of(written.name() + END, PDF,
                    Files.readAllBytes(written.files().getFirst())));
        } catch (IOException unreadable) {
            return Validated.invalid(new Problem(Code.UNREADABLE,
                    Place.ofFile(written.files().getFirst().toString()), "the paper cannot be read", "it once more"));
        }
    }

    private Validated<LifeStep> first(Reading open, LoosePaper paper, String name, MailFile file) {
        return customer(paper).then(customer -> LooseWords.of(paper.paper()).map(letter -> new MailDesk(book).first(
                MailLife.idAfter(name, MailLife.about(open, name)), matter(paper, name, file, letter), customer,
                paper.site(), file.hash())));
    }

    private static Loose matter(LoosePaper paper, String name, MailFile file, MailLetter letter) {
        return new Loose(name, paper.purpose(), paper.paper().language(), file.hash(), paper.tells(),
                Optional.of(letter));
    }

    /** The mail about a paper as it would be written, with why it cannot be; nothing is written. */
    public Validated<MailSheet> proposal(LoosePaper paper) {
        return pdf(paper).then(pdf -> {
            String name = new PaperWriter(book).named(paper.name(), paper.paper(), pdf.bytes());
            MailFile file = MailFile.of(name + END, PDF, pdf.bytes());
            return book.read(open -> first(open, paper, name, file)
                    .map(step -> proposal(open, MailLife.proposed(step), paper, file)));
        });
    }

    private MailSheet proposal(Reading open, MailLife mail, LoosePaper paper, MailFile file) {
        Problems problems = new Problems();
        Optional<WrittenMail> written = mail.matter() instanceof Loose loose
                ? problems.take(assembly().of(open, mail, loose, List.of(file)))
                : Optional.empty();
        Repeat.of(before(open, paper), new MailDesk(book).now(), true).ifPresent(problems::add);
        MailTelling telling = MailTelling.of(book);
        return MailSheet.of(telling.entry(open, mail), mail, written.map(WrittenMail::copy), problems.list(),
                telling.zone());
    }

    /** The paper to look at. */
    public Validated<Pdf> pdf(LoosePaper paper) {
        return new PaperWriter(book).printed(paper.paper(), "", fitting(paper, Extras.NONE), Map.of())
                .map(files -> Pdf.of(files.values().iterator().next()));
    }

    /** Mails about a paper, under each of the names that it may have been written by. */
    public Validated<MailList> about(LoosePaper paper) {
        return book.read(open -> Validated.valid(new MailList(before(open, paper).stream()
                .map(mail -> MailTelling.of(book).entry(open, mail)).toList(), List.of())));
    }

    private static List<MailLife> before(Reading open, LoosePaper paper) {
        return Stream.of(paper.name(), PaperWriter.longer(paper.name(), paper.paper()))
                .flatMap(name -> MailLife.about(open, name).stream()).toList();
    }
}
