package icequill.shop;

import icequill.files.form.BookSettings;
import icequill.ledger.Book;
import icequill.ledger.Opening;
import icequill.ledger.papers.Adoption;
import icequill.problem.Validated;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One shop that stays open for many requests: its book is held, and what its files say is read again when they were changed. For
 * many threads.
 */
public final class StandingShop implements AutoCloseable {

    private final Path folder;
    private final Clock clock;
    private @Nullable Book held;
    private @Nullable Known known;

    /** What the shop's files said, while they looked like this and these rates were in force. */
    private record Known(List<Stamp> stamps, Optional<String> ratesInForce, BookSettings settings, RatesOnce rates) {}

    /** By which it is seen that a file was changed. */
    private record Stamp(Path file, FileTime changed, long size) {}

    private StandingShop(Path folder, Clock clock) {
        this.folder = folder;
        this.clock = clock;
    }

    public static StandingShop of(Path folder, Clock clock) {
        return new StandingShop(folder, clock);
    }

    /** The shop as it is now, for one request. */
    public synchronized ShopBook now() {
        List<Stamp> stamps = stamps();
        Known last = known;
        BookSettings settings = last != null && last.stamps().equals(stamps)
                ? last.settings()
                : BookSettings.of(folder);
        ShopBook shop = fresh(settings, RatesOnce.inForce(), book(settings));
        Optional<String> inForce = shop.isShared()
                ? shop.read(open -> Validated.valid(open.rates().inForce().map(Adoption::version))).found()
                        .flatMap(version -> version)
                : Optional.empty();
        if (last != null && last.stamps().equals(stamps) && last.ratesInForce().equals(inForce)) {
            return fresh(settings, last.rates(), shop.held());
        }
        // Here, so that no two requests read them at once.
        shop.ratesInUse();
        known = new Known(stamps, inForce, settings, shop.rates());
        return shop;
    }

    private ShopBook fresh(BookSettings settings, RatesOnce rates, Optional<Book> book) {
        return new ShopBook(folder, settings, rates, clock, book, Optional.empty(), List.of());
    }

    /** Empty while there is none, which shows itself when it is asked for. */
    private Optional<Book> book(BookSettings settings) {
        Book open = held;
        if (open == null) {
            ShopBook shop = fresh(settings, RatesOnce.inForce(), Optional.empty());
            open = shop.exists()
                    ? Opening.open(shop.place(), clock, shop.author()).found().orElse(null)
                    : null;
            held = open;
        }
        return Optional.ofNullable(open);
    }

    private List<Stamp> stamps() {
        List<Stamp> stamps = new ArrayList<>();
        for (String part : List.of("shop.yaml", "pricing", "templates")) {
            Path top = folder.resolve(part);
            if (Files.exists(top)) {
                try (Stream<Path> files = Files.walk(top)) {
                    files.sorted().forEach(file -> stamps.add(stamp(file)));
                } catch (IOException unreadable) {
                    throw new UncheckedIOException(unreadable);
                }
            }
        }
        return stamps;
    }

    private static Stamp stamp(Path file) {
        try {
            BasicFileAttributes now = Files.readAttributes(file, BasicFileAttributes.class);
            return new Stamp(file, now.lastModifiedTime(), now.size());
        } catch (IOException gone) {
            return new Stamp(file, FileTime.fromMillis(0), -1);
        }
    }

    @Override
    public synchronized void close() {
        Book open = held;
        held = null;
        if (open != null) {
            open.close();
        }
    }
}
