package icequill.cli.book;

import icequill.answer.OpenedOffice;
import icequill.cli.terminal.BookCommand;
import icequill.cli.terminal.ExitCode;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.web.BrowserWindow;
import icequill.web.OfficeServer;
import java.io.BufferedReader;
import java.io.IOException;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Opens the office in a browser. */
@Command(name = "office", mixinStandardHelpOptions = true, description = "Opens the shop's office in the browser of this machine, and serves it until Ctrl-C. The link that is shown lets one browser in, once; Enter makes another.", footerHeading = "%nExamples:%n", footer = {
        "  icequill office", "  icequill office --shop my-shop --port 8123 --no-open"})
public final class OfficeCommand extends BookCommand {

    private final BufferedReader typed;

    @Option(names = "--port", paramLabel = "N", defaultValue = "0", description = "The port, from 1 to 65535. Default: any that is free.")
    private int port;

    @Option(names = "--no-open", description = "Only show the link; open no browser.")
    private boolean closed;

    /** @param typed where Enter asks for another link */
    public OfficeCommand(Clock clock, BufferedReader typed) {
        super(clock);
        this.typed = typed;
    }

    @Override
    public Integer call() throws InterruptedException, IOException {
        return switch (OfficeServer.open(folder(), clock(), port, printout().err()::println)) {
        case Validated.Valid<OfficeServer>(OfficeServer server) -> serve(server);
        case Validated.Invalid<OfficeServer>(List<Problem> problems) -> printout().problems(problems);
        };
    }

    private int serve(OfficeServer server) throws InterruptedException, IOException {
        CountDownLatch stopped = new CountDownLatch(1);
        Runtime.getRuntime().addShutdownHook(new Thread(() -> {
            server.close();
            stopped.countDown();
        }));
        invite(server);
        while (typed.readLine() != null) {
            invite(server);
        }
        stopped.await();
        return ExitCode.OK.status();
    }

    private void invite(OfficeServer server) {
        String link = server.link();
        boolean isOpened = !closed && BrowserWindow.show(link);
        show(Validated.valid(new OpenedOffice(link)), opened -> {
            print(isOpened
                    ? "The office opens in your browser; if not, open this link there:"
                    : "Open this link in your browser:");
            print("  " + opened.link());
            print("It works once. Enter shows another; Ctrl-C closes the office.");
        });
        printout().out().flush();
    }
}
