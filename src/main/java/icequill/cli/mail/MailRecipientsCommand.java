package icequill.cli.mail;

import icequill.answer.mail.MailRecipients;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.CustomerName;
import icequill.cli.terminal.Table;
import icequill.office.mail.RecipientsOffice;
import icequill.shop.ShopBook;
import java.time.Clock;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Tells who gets papers by mail. */
@Command(name = "recipients", mixinStandardHelpOptions = true, description = "Tells who at a customer's gets which kinds of papers by mail, and how. It is changed by: icequill contact change, icequill customer change.", footerHeading = "%nExample:%n", footer = "  icequill mail recipients fernhill-hotels")
public final class MailRecipientsCommand extends BookCommand {

    @Mixin
    private CustomerName customer = new CustomerName();

    public MailRecipientsCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        return show(RecipientsOffice.of(ShopBook.of(folder(), clock())).of(id(customer.text())), this::tell);
    }

    private void tell(MailRecipients found) {
        print(Table.of(found.head(), found.rows(), found.head().size()));
        found.printed().ifPresent(address -> print("On bills: " + address));
        if (!found.wishes().enclosed().isEmpty()) {
            print("Along with bills: " + String.join(", ", found.wishes().enclosed()));
        }
    }
}
