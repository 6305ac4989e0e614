package icequill.cli.offer;

import icequill.agreement.GoingOn;
import icequill.answer.shown.QuoteStanding;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.ConstantNames;
import icequill.cli.terminal.PaperName;
import icequill.life.quote.AcceptanceWay;
import icequill.life.quote.QuoteEvent.Acceptance;
import icequill.office.quoting.AgreementWish;
import icequill.office.quoting.QuoteLifeOffice;
import icequill.shop.ShopDay;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Notes that a customer accepted a quote. */
@Command(name = "accept", mixinStandardHelpOptions = true, description = "Notes that the customer accepted a quote. One of maintenance becomes an agreement at the quoted price, with its number; nothing is typed again.", footerHeading = "%nExamples:%n", footer = {
        "  icequill quote accept MQ-2026-00002 --plan semiannual --by \"R. Vance\" --title manager --way signed --on 2026-05-20 --start 2027-06-01",
        "  icequill quote accept --help                 who, how, and what the agreement is to be"})
public final class QuoteAcceptCommand extends BookCommand {

    @Mixin
    private PaperName paper = new PaperName();

    @Option(names = "--plan", paramLabel = "ID", description = "The plan that was chosen, of a maintenance quote.")
    private @Nullable String plan;

    @Option(names = "--by", required = true, paramLabel = "NAME", description = "Who accepted.")
    private String by = "";

    @Option(names = "--title", paramLabel = "TEXT", description = "What he or she is at the customer's.")
    private @Nullable String title;

    @Option(names = "--authority", paramLabel = "TEXT", description = "By what right he or she accepts for the customer, where that was said.")
    private @Nullable String authority;

    @Option(names = "--po", paramLabel = "NUMBER", description = "The customer's purchase order for it.")
    private @Nullable String purchaseOrder;

    @Option(names = "--way", required = true, paramLabel = "WAY", converter = Ways.class, completionCandidates = Ways.class, description = "How: ${COMPLETION-CANDIDATES}.")
    private AcceptanceWay way = AcceptanceWay.SIGNED;

    @Option(names = "--on", paramLabel = "DAY", description = "On which day; today if left out.")
    private @Nullable LocalDate day;

    @Option(names = "--honor", description = "Holds the prices though the last day of the quote has gone by.")
    private boolean honor;

    @ArgGroup(exclusive = false, heading = "%nOf the agreement that it becomes:%n")
    private Terms terms = new Terms();

    /** What the quote does not say of the agreement. */
    static final class Terms {

        @Option(names = "--agreement", paramLabel = "NUMBER", description = "An agreement of the book that the quote became already; none is made then.")
        private @Nullable String existing;

        @Option(names = "--number", paramLabel = "NUMBER", description = "The number of the agreement; the next free one of the year if left out, such as A-2026-007.")
        private @Nullable String number;

        @Option(names = "--start", paramLabel = "DAY", description = "Its first day; that of the quote if left out, or the day of acceptance where that is later.")
        private @Nullable LocalDate start;

        @Option(names = "--cancel-days", paramLabel = "DAYS", description = "Notice by which the customer may end it within the term; as the shop has it if left out.")
        private @Nullable Integer cancelDays;

        @Option(names = "--goes-on", paramLabel = "HOW", converter = GoingOns.class, completionCandidates = GoingOns.class, description = "After the term: ${COMPLETION-CANDIDATES}; for another if left out.")
        private @Nullable GoingOn goesOn;

        @Option(names = "--renewal-months", paramLabel = "MONTHS", description = "For how long it goes on; as the shop has it, or as long as the term, if left out.")
        private @Nullable Integer months;

        @Option(names = "--refuse-days", paramLabel = "DAYS", description = "Days before the end by which the customer says that it is not to go on; as the shop has it if left out. Laws may ask for more: check with your adviser.")
        private @Nullable Integer refuseDays;

        @Option(names = "--raise", paramLabel = "PERCENT", description = "By which the price rises then; settled when the time comes if left out.")
        private @Nullable BigDecimal raise;

        private AgreementWish wish() {
            return new AgreementWish(Optional.ofNullable(existing), Optional.ofNullable(number),
                    Optional.ofNullable(start),
                    Optional.ofNullable(cancelDays), Optional.ofNullable(goesOn), Optional.ofNullable(months),
                    Optional.ofNullable(refuseDays), Optional.ofNullable(raise));
        }
    }

    /** The names of ways. */
    static final class Ways extends ConstantNames<AcceptanceWay> {
        Ways() {
            super(AcceptanceWay.class);
        }
    }

    /** The names of how agreements go on. */
    static final class GoingOns extends ConstantNames<GoingOn> {
        GoingOns() {
            super(GoingOn.class);
        }
    }

    public QuoteAcceptCommand(Clock clock) {
        super(clock);
    }

    @Override
    public Integer call() {
        Acceptance yes = new Acceptance(day == null ? ShopDay.today(folder(), clock()) : day,
                Optional.ofNullable(plan), Optional.of(by), Optional.ofNullable(title),
                Optional.ofNullable(authority), Optional.ofNullable(purchaseOrder), way, honor);
        return show(QuoteLifeOffice.of(folder(), clock()).accept(paper.text(), yes, terms.wish()), this::tell);
    }

    private void tell(QuoteStanding standing) {
        print("Accepted: " + standing.number() + standing.accepted().map(yes -> " on " + yes.day()).orElse(""));
        standing.made().ifPresent(number -> print("It became agreement " + number
                + ". To print it: icequill agreement print " + number));
    }
}
