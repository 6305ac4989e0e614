package icequill.web;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.office.register.ImportOffice;
import icequill.shop.ShopBook;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;

/**
 * An office that is open for a test.
 *
 * @param address by which browsers find it
 * @param faults that it told
 */
record OpenOffice(Path shop, OfficeServer server, String address, List<String> faults) implements AutoCloseable {

    /** The end of the year of the demo's visits. */
    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-12-30T17:00:00Z"), ZoneOffset.UTC);
    private static final int PATIENCE_MILLIS = 20_000;

    static OpenOffice of(Path shop) {
        List<String> faults = new CopyOnWriteArrayList<>();
        OfficeServer server = OfficeServer.open(shop, CLOCK, 0, faults::add).orElseThrow();
        String link = server.link();
        return new OpenOffice(shop, server, link.substring(0, link.indexOf("/enter")), faults);
    }

    /** Of the invented shop, with these visits of it recorded and not billed. */
    static OpenOffice withVisits(Path folder, String... visits) {
        Path shop = DemoShop.in(folder);
        assertThat(ImportOffice.of(ShopBook.of(shop, CLOCK)).run(List.of(visits).stream()
                .map(visit -> shop.resolve("visits/" + visit + ".yaml")).toList(), false).problems()).isEmpty();
        return of(shop);
    }

    int port() {
        return Integer.parseInt(address.substring(address.lastIndexOf(':') + 1));
    }

    /** Somebody who never followed a link. */
    Visitor stranger() {
        return new Visitor(address, Optional.empty());
    }

    /** Somebody who follows a new link. */
    Visitor owner() {
        return stranger().enter(server.link());
    }

    /** What comes back for bytes as they are, to the end of the connection. */
    String raw(String request) {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port())) {
            socket.setSoTimeout(PATIENCE_MILLIS);
            socket.getOutputStream().write(request.getBytes(StandardCharsets.UTF_8));
            socket.getOutputStream().flush();
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** Closes it, in which nothing may have gone wrong that a test did not look at. */
    @Override
    public void close() {
        server.close();
        assertThat(faults).isEmpty();
    }
}
