package icequill.ledger;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** Stands between a program and a server on this machine, and cuts the connection at a COMMIT. */
public final class CuttingProxy implements AutoCloseable {

    private final ServerSocket door;
    private final int server;
    private volatile Cut cut = Cut.NEVER;

    /** When to cut, once. */
    public enum Cut {
        NEVER, BEFORE_THE_SERVER_HEARS, BEFORE_THE_ANSWER, FOR_GOOD
    }

    public CuttingProxy(int server) throws IOException {
        this.server = server;
        this.door = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
        Thread.ofVirtual().start(this::accept);
    }

    public int port() {
        return door.getLocalPort();
    }

    public void at(Cut next) {
        this.cut = next;
    }

    @Override
    public void close() throws IOException {
        door.close();
    }

    private void accept() {
        try {
            while (true) {
                Socket client = door.accept();
                Thread.ofVirtual().start(() -> serve(client));
            }
        } catch (IOException closed) {
            // No more.
        }
    }

    private void serve(Socket client) {
        try (client; Socket inner = new Socket(InetAddress.getLoopbackAddress(), server)) {
            Thread.ofVirtual().start(() -> answer(inner, client));
            InputStream in = client.getInputStream();
            OutputStream out = inner.getOutputStream();
            byte[] bytes = new byte[64 << 10];
            for (int count = in.read(bytes); count >= 0; count = in.read(bytes)) {
                boolean commit = new String(Arrays.copyOf(bytes, count), StandardCharsets.ISO_8859_1)
                        .contains("COMMIT");
                if (commit && (cut == Cut.BEFORE_THE_SERVER_HEARS || cut == Cut.FOR_GOOD)) {
                    if (cut == Cut.FOR_GOOD) {
                        door.close();
                    }
                    cut = Cut.NEVER;
                    return;
                }
                swallowing = commit && cut == Cut.BEFORE_THE_ANSWER;
                out.write(bytes, 0, count);
                out.flush();
            }
        } catch (IOException ended) {
            // Either side.
        }
    }

    private volatile boolean swallowing;

    private void answer(Socket inner, Socket client) {
        try {
            InputStream in = inner.getInputStream();
            OutputStream out = client.getOutputStream();
            byte[] bytes = new byte[64 << 10];
            for (int count = in.read(bytes); count >= 0; count = in.read(bytes)) {
                if (swallowing) {
                    swallowing = false;
                    cut = Cut.NEVER;
                    client.close();
                    return;
                }
                out.write(bytes, 0, count);
                out.flush();
            }
        } catch (IOException ended) {
            // Either side.
        }
    }
}
