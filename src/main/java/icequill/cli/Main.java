package icequill.cli;

import static picocli.CommandLine.Model.UsageMessageSpec.SECTION_KEY_COMMAND_LIST;

import icequill.cli.billing.CreditCommand;
import icequill.cli.billing.InvoiceCommand;
import icequill.cli.billing.IssuedPaperCommand;
import icequill.cli.billing.PaymentCommand;
import icequill.cli.book.AuditCommand;
import icequill.cli.book.BackupCommand;
import icequill.cli.book.CheckCommand;
import icequill.cli.book.DemoCommand;
import icequill.cli.book.ExportCommand;
import icequill.cli.book.FindCommand;
import icequill.cli.book.FormCommand;
import icequill.cli.book.ImportCommand;
import icequill.cli.book.NamesCommand;
import icequill.cli.book.NewCommand;
import icequill.cli.book.OfficeCommand;
import icequill.cli.book.RatesCommand;
import icequill.cli.book.RestoreCommand;
import icequill.cli.book.ShopCommand;
import icequill.cli.book.ShowCommand;
import icequill.cli.book.TodayCommand;
import icequill.cli.claim.ClaimCommand;
import icequill.cli.mail.MailCommand;
import icequill.cli.offer.AgreementCommand;
import icequill.cli.offer.BrushingCommand;
import icequill.cli.offer.CompareCommand;
import icequill.cli.offer.FitCommand;
import icequill.cli.offer.PriceCommand;
import icequill.cli.offer.QuoteCommand;
import icequill.cli.refrigerant.RefrigerantCommand;
import icequill.cli.register.ContactCommand;
import icequill.cli.register.CustomerCommand;
import icequill.cli.register.MachineCommand;
import icequill.cli.register.SiteCommand;
import icequill.cli.terminal.ExitCode;
import icequill.cli.terminal.PlainText;
import icequill.cli.terminal.Terminal;
import icequill.cli.visit.CallCommand;
import icequill.cli.visit.JobCommand;
import icequill.cli.visit.SaleCommand;
import icequill.cli.visit.VisitCommand;
import icequill.problem.Discretion;
import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** The program's entry. */
@Command(name = "icequill", mixinStandardHelpOptions = true, versionProvider = Main.Version.class, description = "Prices the visits of a shop that looks after commercial ice machines, and prints its papers.", commandListHeading = "", footerHeading = "%nStart here:%n", footer = {
        "  icequill demo                            see everything at work for an invented shop",
        "  icequill new my-shop                     make a folder for your own shop",
        "  icequill price ten-minute-brushing --how",
        "", "Exit status: 0 done, 1 a fault, 2 wrong usage, 3 the input has problems (all are listed)."})
public final class Main implements Runnable {

    /** No machine is older, and no agreement runs longer. */
    private static final int FIRST_YEAR = 1950;
    private static final int LAST_YEAR = 2149;

    private static final List<Class<?>> COMMANDS = List.of(DemoCommand.class, NewCommand.class, ShopCommand.class,
            OfficeCommand.class,
            TodayCommand.class, CheckCommand.class,
            PriceCommand.class, QuoteCommand.class, AgreementCommand.class, CompareCommand.class,
            BrushingCommand.class, FitCommand.class, CallCommand.class, VisitCommand.class, JobCommand.class,
            ClaimCommand.class, RefrigerantCommand.class,
            MailCommand.class,
            SaleCommand.class,
            InvoiceCommand.class,
            CreditCommand.class, PaymentCommand.class, IssuedPaperCommand.class, FindCommand.class, ShowCommand.class,
            CustomerCommand.class, ContactCommand.class, SiteCommand.class, MachineCommand.class, FormCommand.class,
            ImportCommand.class, ExportCommand.class, RatesCommand.class, AuditCommand.class, BackupCommand.class,
            RestoreCommand.class, NamesCommand.class, CommandLine.HelpCommand.class);

    private static final Set<List<String>> VERSION = Set.of(List.of("--version"), List.of("-V"));

    /** Help is read like a page: not in narrow columns, nor in lines too long for the eye. */
    private static final int NARROWEST_HELP = 60;
    private static final int WIDEST_HELP = 80;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    private Main() {
    }

    /** Starts the program and ends the process with its exit status. */
    public static void main(String[] args) {
        // The PDF library writes positions in the default locale's digits, which in some locales are not those of the format.
        Locale.setDefault(Locale.ROOT);
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        BufferedReader typed = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        System.exit(run(Clock.system(ZoneId.systemDefault()), typed, out, err, args));
    }

    /** Runs one command line; everything that differs between a terminal and a test comes in here. */
    static int run(Clock clock, BufferedReader typed, PrintWriter out, PrintWriter err, String... args) {
        CommandLine line = asked(clock, typed, args);
        line.setOut(out);
        line.setErr(err);
        line.setParameterExceptionHandler(Main::usage);
        line.setExecutionExceptionHandler((fault, command, parsed) -> fault(fault, command));
        line.setExecutionStrategy(Main::known);
        try {
            return line.execute(args);
        } catch (Error fault) {
            return fault(fault, line);
        }
    }

    /** All commands with their options, for help, and for the manual. */
    public static CommandLine commands(Clock clock) {
        return commands(clock, new BufferedReader(Reader.nullReader()), COMMANDS);
    }

    private static CommandLine commands(Clock clock, BufferedReader typed, List<Class<?>> commands) {
        ClockFactory factory = new ClockFactory(clock, typed);
        CommandLine line = new CommandLine(new Main(), factory);
        commands.forEach(command -> line.addSubcommand(new CommandLine(command, factory)));
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.registerConverter(LocalDate.class, Main::day);
        line.setUsageHelpWidth(Math.clamp(Terminal.columns(), NARROWEST_HELP, WIDEST_HELP));
        line.getHelpSectionMap().put(SECTION_KEY_COMMAND_LIST, new CommandList());
        return line;
    }

    /** With the one that is asked for, or none, since looking at the options of all takes longer than most of them; all where it takes more than one. */
    private static CommandLine asked(Clock clock, BufferedReader typed, String... args) {
        List<Class<?>> asked = COMMANDS.stream()
                .filter(command -> args.length > 0 && command != CommandLine.HelpCommand.class
                        && command.getAnnotation(Command.class).name().equals(args[0]))
                .toList();
        return asked.isEmpty() && !VERSION.contains(List.of(args)) ? commands(clock) : commands(clock, typed, asked);
    }

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }

    private static LocalDate day(String text) {
        try {
            LocalDate day = LocalDate.parse(text);
            if (day.getYear() < FIRST_YEAR || day.getYear() > LAST_YEAR) {
                throw new TypeConversionException(
                        day + " is too far off; a year from " + FIRST_YEAR + " to " + LAST_YEAR + " is meant");
            }
            return day;
        } catch (DateTimeException noDay) {
            throw new TypeConversionException("there is no day \"" + text + "\"; write it as 2026-05-14");
        }
    }

    /** Runs what was asked for, unless a word was not understood: asking for help does not excuse it. */
    private static int known(CommandLine.ParseResult asked) {
        for (CommandLine.ParseResult part = asked; part != null; part = part.subcommand()) {
            if (!part.unmatched().isEmpty()) {
                throw new CommandLine.UnmatchedArgumentException(part.commandSpec().commandLine(), part.unmatched());
            }
        }
        return new CommandLine.RunLast().execute(asked);
    }

    private static int usage(ParameterException wrong, String... args) {
        CommandLine line = wrong.getCommandLine();
        PrintWriter err = PlainText.before(line.getErr());
        err.println(wrong.getMessage());
        CommandLine.UnmatchedArgumentException.printSuggestions(wrong, err);
        err.println("Try: " + line.getCommandSpec().qualifiedName() + " --help");
        return ExitCode.USAGE.status();
    }

    private static int fault(Throwable fault, CommandLine line) {
        PrintWriter err = PlainText.before(line.getErr());
        err.println("A fault stopped the program: " + Discretion.of(fault.toString()));
        err.println(
                "What was to be written is there as a whole or not at all. For the details, set ICEQUILL_TRACE=1 and try again.");
        if (System.getenv("ICEQUILL_TRACE") != null) {
            StringWriter trace = new StringWriter();
            fault.printStackTrace(new PrintWriter(trace));
            trace.toString().lines().map(Discretion::of).forEach(err::println);
        }
        return ExitCode.FAULT.status();
    }

    /** Reads the version that the build wrote into the jar. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            String version = Main.class.getPackage().getImplementationVersion();
            return new String[]{"icequill " + (version == null ? "(not packaged)" : version)};
        }
    }
}
