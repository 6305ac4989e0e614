package icequill.web;

import icequill.problem.Code;
import icequill.problem.Discretion;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.shop.StandingShop;
import icequill.web.door.Door;
import icequill.web.door.Doorkeeper;
import icequill.web.page.Assets;
import icequill.web.page.PageHandler;
import icequill.web.run.OwnSending;
import icequill.web.run.Runs;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import io.javalin.http.ContentTooLargeResponse;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.util.JavalinBindException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.ThreadLocalRandom;
import java.util.function.Consumer;
import org.eclipse.jetty.io.EofException;
import org.eclipse.jetty.util.thread.QueuedThreadPool;

/** Serves the office of one shop to the browsers of this machine, and to nobody else. */
public final class OfficeServer implements AutoCloseable {

    private static final String OWN_MACHINE = "127.0.0.1";
    private static final int HIGHEST_PORT = 65_535;
    private static final int THREADS = 32;
    /** A visit with all that can be said of it is far below. */
    private static final long LARGEST_FORM = 1_000_000;
    /** Lists of a shop that moves in, in one sending. */
    private static final long LARGEST_HANDED = 20_000_000;
    private static final long IDLE_MILLIS = 30_000;

    private final StandingShop shop;
    private final Door door = new Door();
    private final Assets assets = Assets.shipped();
    private final Consumer<String> faults;
    private final Runs runs;
    private final OwnSending sending;
    private final Javalin server;

    private OfficeServer(Path folder, Clock clock, int port, Consumer<String> faults) {
        this.faults = faults;
        this.shop = StandingShop.of(folder, clock);
        this.runs = new Runs(shop, fault -> told("work", fault));
        this.sending = new OwnSending(shop, fault -> told("mail", fault));
        this.server = Javalin.create(this::configure).start(OWN_MACHINE, port);
        sending.begin();
    }

    /**
     * Opens the office, or says what is in the way.
     *
     * @param port where browsers find it; 0 for any that is free
     * @param faults is told what went wrong in the program, under the number that a page tells
     */
    public static Validated<OfficeServer> open(Path folder, Clock clock, int port, Consumer<String> faults) {
        if (!Files.exists(folder.resolve("shop.yaml"))) {
            return Validated.invalid(new Problem(Code.MISSING, Place.ofFile(folder.resolve("shop.yaml").toString()),
                    "there is no shop here", "--shop with a shop folder, as made by: icequill new DIR"));
        }
        if (port < 0 || port > HIGHEST_PORT) {
            return Validated.invalid(new Problem(Code.OUT_OF_RANGE, Place.NOWHERE, "there is no port " + port,
                    "--port from 1 to " + HIGHEST_PORT + ", or none for any that is free"));
        }
        try {
            return Validated.valid(new OfficeServer(folder, clock, port, faults));
        } catch (JavalinBindException taken) {
            return Validated.invalid(new Problem(Code.ALREADY_EXISTS, Place.NOWHERE,
                    "port " + port + " is taken, or may not be used by you",
                    "another --port, or none for any that is free"));
        }
    }

    /** A new link that lets one browser in, once; the one before it does so no more. */
    public String link() {
        return "http://" + OWN_MACHINE + ":" + server.port() + Doorkeeper.ENTRY + "?key=" + door.newLink();
    }

    @Override
    public void close() {
        server.stop();
        sending.close();
        runs.close();
        shop.close();
    }

    private void configure(JavalinConfig config) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.http.maxRequestSize = LARGEST_FORM;
        config.jetty.multipartConfig.maxTotalRequestSize(LARGEST_HANDED, SizeUnit.BYTES);
        config.jetty.multipartConfig.maxFileSize(LARGEST_HANDED, SizeUnit.BYTES);
        config.jetty.multipartConfig.maxInMemoryFileSize((int) LARGEST_HANDED, SizeUnit.BYTES);
        config.jetty.threadPool = new QueuedThreadPool(THREADS);
        config.jetty.modifyHttpConfiguration(http -> {
            http.setSendServerVersion(false);
            http.setIdleTimeout(IDLE_MILLIS);
        });
        config.jetty.modifyServer(own -> own.setErrorHandler(new BareErrors()));
        config.jetty.modifyServletContextHandler(context -> context.setErrorHandler(new BareErrors()));
        PageHandler handler = new PageHandler(shop, assets);
        Doorkeeper doorkeeper = new Doorkeeper(door);
        config.routes.before(context -> {
            Doorkeeper.headers(context::header);
            if (context.req()
                    .getContentLengthLong() > (context.isMultipartFormData() ? LARGEST_HANDED : LARGEST_FORM)) {
                throw new ContentTooLargeResponse();
            }
            doorkeeper.refusal(context).ifPresent(why -> refuse(context, handler, why));
        });
        config.routes.get(Doorkeeper.ENTRY, context -> doorkeeper.enter(context).ifPresentOrElse(
                why -> refuse(context, handler, why), () -> handler.welcome(context)));
        config.routes.get(Doorkeeper.OPEN + "{hash}/{name}", this::asset);
        new Routes(config.routes, handler, door, runs).add();
        config.routes.error(HttpStatus.NOT_FOUND.getCode(), context -> {
            if (context.attribute(Doorkeeper.SESSION) != null && !PageHandler.hasAnswered(context)) {
                handler.refuse(context, HttpStatus.NOT_FOUND, "nothing");
            }
        });
        config.router.javaLangErrorHandler((answer, error) -> {
            told("a page", error);
            answer.setStatus(HttpStatus.INTERNAL_SERVER_ERROR.getCode());
        });
        config.routes.exception(EofException.class, (gone, context) -> context.status(HttpStatus.BAD_REQUEST));
        config.routes.exception(Exception.class, (fault, context) -> fault(context, handler, fault));
    }

    private static void refuse(Context context, PageHandler handler, Doorkeeper.Refusal why) {
        handler.refuse(context, why.status(), why.name().toLowerCase(Locale.ROOT));
        context.skipRemainingHandlers();
    }

    private void asset(Context context) {
        Optional<Assets.Asset> asset = assets.at(context.path());
        context.status(asset.isPresent() ? HttpStatus.OK : HttpStatus.NOT_FOUND);
        asset.ifPresent(found -> {
            context.header("Cache-Control", "public, max-age=31536000, immutable");
            context.contentType(found.type()).result(found.text());
        });
    }

    /** What went wrong is told here, under a number that the page tells. */
    private void fault(Context context, PageHandler handler, Exception fault) {
        handler.fault(context, told(context.path(), fault));
    }

    private String told(String where, Throwable fault) {
        String number = Integer.toHexString(ThreadLocalRandom.current().nextInt() | 0x1000_0000);
        StringWriter trace = new StringWriter();
        fault.printStackTrace(new PrintWriter(trace));
        faults.accept("Fault " + number + " at " + where + ": " + Discretion.of(trace.toString()));
        return number;
    }
}
