package icequill.web.page;

import icequill.answer.ProblemReport;
import icequill.files.answer.AnswerMapper;
import icequill.files.yaml.Languages;
import icequill.party.Language;
import icequill.party.Shop;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.shop.BookForms;
import icequill.shop.ShopBook;
import icequill.shop.ShopDay;
import icequill.shop.StandingShop;
import icequill.web.door.Door;
import icequill.web.door.Doorkeeper;
import icequill.web.door.Session;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Asks pages, and sends what they answer: as a page, or as JSON where that is accepted. */
public final class PageHandler {

    /** The field of every form that holds its key. */
    static final String KEY = "key";

    private static final String ANSWERED = "answered";
    private static final String JSON = "application/json";

    private final StandingShop shop;
    private final Assets assets;
    private final List<Language> languages = Languages.known();
    private final PageTemplates templates = new PageTemplates();

    public PageHandler(StandingShop shop, Assets assets) {
        this.shop = shop;
        this.assets = assets;
    }

    /** Answers a question, which changes nothing. */
    public void get(Context context, Page page) {
        Asked asked = asked(context, context.queryParamMap());
        send(context, asked, page.answer(asked));
    }

    /** The same of a question that is too long for an address; it comes from a page of ours, and changes nothing either. */
    public void ask(Context context, Page page) {
        Asked asked = asked(context, context.formParamMap());
        send(context, asked, page.answer(asked));
    }

    /** Does what a form asks for, once; its page gives the address that shows what was made. */
    public void post(Context context, FormPage page) {
        Asked asked = asked(context, context.formParamMap(), uploads(context));
        Optional<String> key = asked.formKey();
        if (key.isEmpty()) {
            refuse(context, asked, HttpStatus.FORBIDDEN, "old-form");
            return;
        }
        Validated<String> done = asked.book().once(key.get(), SentContent.of(asked),
                open -> page.done(asked.with(open)));
        if (done instanceof Validated.Valid<String>(String path)) {
            send(context, asked, new Answer.Gone(path));
        } else {
            send(context, asked, wantsJson(context)
                    ? new Answer.Refused(done.problems())
                    : new Answer.Instead(page.again(asked, done.problems()), done.problems()));
        }
    }

    /** Does what a form asks for as often as it is sent, each time in place of the time before. */
    public void repeat(Context context, Page page) {
        Asked asked = asked(context, context.formParamMap());
        if (asked.formKey().isPresent()) {
            send(context, asked, page.answer(asked));
        } else {
            refuse(context, asked, HttpStatus.FORBIDDEN, "old-form");
        }
    }

    /** Chooses a language for the session, and shows the page again that was seen. */
    public void choose(Context context, Door door) {
        Asked asked = asked(context, context.formParamMap());
        asked.text("language").flatMap(Language::ofTag).filter(Languages::isKnown)
                .ifPresent(language -> door.choose(asked.session(), language));
        context.redirect(asked.text("back").filter(PageHandler::isOurs).orElse("/today"), HttpStatus.SEE_OTHER);
    }

    /** A path alone: no browser takes it for another machine's. */
    private static boolean isOurs(String path) {
        return path.matches("/[A-Za-z0-9][A-Za-z0-9_./?=&%+-]*");
    }

    /**
     * Lets somebody go on who came by a link. A page does it, not a redirect: to browsers that still comes from whence the link was
     * followed, and they would not send the cookie along.
     */
    public void welcome(Context context) {
        context.html(templates.fill("welcome", frame(asked(context, Map.of())), ""));
    }

    /** Whether a page was asked, whatever it answered. */
    public static boolean hasAnswered(Context context) {
        return context.attribute(ANSWERED) != null;
    }

    /** Says that something went wrong here, and no more of it than its number in the log. */
    public void fault(Context context, String number) {
        context.status(HttpStatus.INTERNAL_SERVER_ERROR);
        context.html(templates.fill("fault", frame(asked(context, Map.of())), number));
    }

    /** Sends somebody away. */
    public void refuse(Context context, HttpStatus status, String why) {
        refuse(context, asked(context, Map.of()), status, why);
    }

    private void refuse(Context context, Asked asked, HttpStatus status, String why) {
        context.status(status);
        context.html(templates.fill("refused", frame(asked), why));
    }

    private static void save(Context context, String type, String name, String text) {
        context.header("Content-Disposition", "attachment; filename=\"" + name + "\"");
        context.contentType(type).result(text);
    }

    private void send(Context context, Asked asked, Answer answer) {
        context.attribute(ANSWERED, true);
        switch (answer) {
        case Answer.Shown shown -> {
            if (wantsJson(context)) {
                if (shown.data() instanceof ProblemReport report) {
                    context.status(status(report.problems()));
                }
                context.contentType(JSON).result(AnswerMapper.text(shown.data()));
            } else {
                context.html(templates.fill(shown.template(), frame(asked), shown.shown()));
            }
        }
        case Answer.Gone gone -> context.redirect(gone.path(), HttpStatus.SEE_OTHER);
        case Answer.Sent sent -> {
            context.header("Content-Disposition", "inline; filename=\"" + sent.name() + "\"");
            context.contentType("application/pdf").result(sent.pdf().bytes());
        }
        case Answer.Xml xml -> save(context, "application/xml", xml.name(), xml.text());
        case Answer.Calendar calendar -> save(context, "text/calendar", calendar.name(), calendar.text());
        case Answer.Instead instead -> {
            send(context, asked, wantsJson(context) ? new Answer.Refused(instead.problems()) : instead.page());
            if (instead.page() instanceof Answer.Shown) {
                HttpStatus status = status(instead.problems());
                context.status(status == HttpStatus.NOT_FOUND ? HttpStatus.UNPROCESSABLE_CONTENT : status);
            }
        }
        case Answer.Refused refused -> {
            context.status(status(refused.problems()));
            if (wantsJson(context)) {
                context.contentType(JSON).result(AnswerMapper.text(new ProblemReport(refused.problems())));
            } else {
                context.html(templates.fill("problems", frame(asked), refused));
            }
        }
        }
    }

    private static HttpStatus status(List<Problem> problems) {
        return switch (problems.getFirst().code()) {
        case UNKNOWN_NAME -> HttpStatus.NOT_FOUND;
        case CHANGED_MEANWHILE, ALREADY_EXISTS -> HttpStatus.CONFLICT;
        case BOOK_IN_USE, OUTCOME_UNKNOWN -> HttpStatus.SERVICE_UNAVAILABLE;
        default -> HttpStatus.UNPROCESSABLE_CONTENT;
        };
    }

    private Asked asked(Context context, Map<String, List<String>> fields) {
        return asked(context, fields, List.of());
    }

    private Asked asked(Context context, Map<String, List<String>> fields, List<Upload> uploads) {
        ShopBook now = shop.now();
        Session session = context.attribute(Doorkeeper.SESSION) instanceof Session known ? known : Session.fresh();
        Optional<Shop> settings = BookForms.shop(now).shop();
        ZoneId zone = settings.map(Shop::zone).orElseGet(() -> ShopDay.zone(now.folder(), now.clock()));
        Reader reader = Reader.of(settings, session.language(),
                Optional.ofNullable(context.header("Accept-Language")), zone,
                LocalDate.now(now.clock().withZone(zone)));
        Map<String, List<String>> kept = new LinkedHashMap<>();
        fields.forEach((name, values) -> kept.put(name, values.stream().map(String::strip)
                .filter(value -> !value.isEmpty()).toList()));
        return new Asked(now, session, reader, context.path(), context.pathParamMap(), kept, uploads);
    }

    private static List<Upload> uploads(Context context) {
        return context.isMultipartFormData()
                ? context.uploadedFiles().stream().filter(file -> file.size() > 0)
                        .map(file -> new Upload(file.filename(), bytes(file))).toList()
                : List.of();
    }

    private static byte[] bytes(UploadedFile file) {
        try (InputStream content = file.content()) {
            return content.readAllBytes();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private Frame frame(Asked asked) {
        return new Frame(asked.reader(), asked.session(), asked.path(), assets, languages);
    }

    private static boolean wantsJson(Context context) {
        String accepted = context.header("Accept");
        return accepted != null && accepted.startsWith(JSON);
    }
}
