package icequill.cli.mail;

import icequill.answer.mail.MailList;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.Table;
import icequill.office.mail.MailOffice;
import icequill.office.mail.ReturnedOffice;
import icequill.problem.Validated;
import icequill.shop.ShopBook;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Notes mails that came back. */
@Command(name = "returned", mixinStandardHelpOptions = true, description = "Notes that mails came back: of a file or a folder of .eml files that your mail program saved, or of one mail by hand.", footerHeading = "%nExamples:%n", footer = {
        "  icequill mail returned saved/                                     all .eml files there",
        "  icequill mail returned INV-2026-00010.m1 --why \"left the firm\"    by hand"})
public final class MailReturnedCommand extends BookCommand {

    @Parameters(arity = "0..1", paramLabel = "FILE", description = "A file, a folder, or with --why a mail; left out: the folder that shop.yaml sets under mail as returned.")
    private @Nullable String named;

    @Option(names = "--why", paramLabel = "TEXT", description = "What came back said.")
    private @Nullable String why;

    public MailReturnedCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        ShopBook book = ShopBook.of(folder(), clock());
        if (why != null) {
            return show(MailOffice.of(book).returned(named == null ? "" : named, why),
                    sheet -> print(Table.of(sheet.rows(), 2)));
        }
        ReturnedOffice office = ReturnedOffice.of(book);
        Validated<MailList> read = named == null ? office.readFolder() : office.read(file(Path.of(named)));
        return printout().done(list(read), read.found().map(MailList::problems).orElse(List.of()));
    }
}
