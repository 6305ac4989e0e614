package icequill.mail;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import javax.net.ssl.KeyManagerFactory;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLSocket;
import org.jspecify.annotations.Nullable;

/**
 * A mail server on this machine that at one step does what a test asks for, and at all others what RFC 5321 does: an answer, {@code drop}
 * for a connection that it closes, {@code silent} for none until the other side has gone, {@code deaf} for reading no more.
 */
public final class ScriptedServer implements AutoCloseable {

    private static final char[] STORE_PASSWORD = "testing".toCharArray();
    private static final int SMALL_BUFFER = 4_096;

    private final ServerSocket door;
    private final Security security;
    private final @Nullable SSLContext tls;
    private final Map<String, String> script;
    private final Set<Socket> open = ConcurrentHashMap.newKeySet();
    private final CountDownLatch end = new CountDownLatch(1);
    private final List<String> commands = new CopyOnWriteArrayList<>();
    private final List<String> taken = new CopyOnWriteArrayList<>();

    /** @param certificate which of the key stores beside this test's certificates it shows */
    ScriptedServer(Security security, String certificate, Map<String, String> script) {
        this.security = security;
        this.script = script;
        try {
            tls = security == Security.PLAIN ? null : context(certificate);
            door = new ServerSocket();
            // So small that a mail that nobody reads does not fit into it.
            door.setReceiveBufferSize(SMALL_BUFFER);
            door.bind(new InetSocketAddress(InetAddress.getByName("localhost"), 0));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        Thread.ofVirtual().start(this::listen);
    }

    public static ScriptedServer plain(Map<String, String> script) {
        return new ScriptedServer(Security.PLAIN, "", script);
    }

    public int port() {
        return door.getLocalPort();
    }

    /** What it was told, in order. */
    public List<String> commands() {
        return commands;
    }

    /** The mails that it has, as they came. */
    public List<String> taken() {
        return taken;
    }

    private static SSLContext context(String certificate) throws IOException {
        try (InputStream in = Files
                .newInputStream(Path.of("src/test/resources/icequill/mail", certificate + ".p12"))) {
            KeyStore store = KeyStore.getInstance("PKCS12");
            store.load(in, STORE_PASSWORD);
            KeyManagerFactory keys = KeyManagerFactory.getInstance(KeyManagerFactory.getDefaultAlgorithm());
            keys.init(store, STORE_PASSWORD);
            SSLContext context = SSLContext.getInstance("TLS");
            context.init(keys.getKeyManagers(), null, null);
            return context;
        } catch (GeneralSecurityException unreadable) {
            throw new IOException(unreadable);
        }
    }

    private void listen() {
        try {
            while (true) {
                Socket socket = door.accept();
                open.add(socket);
                Thread.ofVirtual().start(() -> serve(socket));
            }
        } catch (IOException closed) {
            // The test is over.
        }
    }

    private void serve(Socket socket) {
        try (socket) {
            Talk talk = new Talk(socket);
            if (security == Security.TLS) {
                talk.encrypt();
            }
            if (talk.answer("GREETING", "220 localhost ready")) {
                talk.serve();
            }
        } catch (IOException gone) {
            // So does the other side now and then.
        }
    }

    @Override
    public void close() {
        end.countDown();
        try {
            door.close();
            for (Socket socket : open) {
                socket.close();
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** One connection. */
    private final class Talk {

        private Socket socket;
        private InputStream in;
        private OutputStream out;
        private int recipients;

        Talk(Socket socket) throws IOException {
            this.socket = socket;
            this.in = new BufferedInputStream(socket.getInputStream());
            this.out = socket.getOutputStream();
        }

        void serve() throws IOException {
            String command = line();
            while (command != null && obey(command)) {
                command = line();
            }
        }

        private boolean obey(String command) throws IOException {
            commands.add(command);
            String verb = command.split(" ", 2)[0];
            return switch (verb) {
            case "EHLO", "HELO" -> answer("EHLO", offers());
            case "STARTTLS" -> answer("STARTTLS", "220 go on") && "220".equals(code("STARTTLS", "220")) && encrypt();
            case "AUTH" -> answer("AUTH", "235 welcome");
            case "MAIL" -> {
                recipients = 0;
                yield answer("MAIL", "250 sender ok");
            }
            case "RCPT" -> {
                recipients++;
                yield answer("RCPT" + recipients, "250 recipient ok");
            }
            case "DATA" -> answer("DATA", "354 go ahead") && (!code("DATA", "354").equals("354") || content());
            case "QUIT" -> {
                answer("QUIT", "221 goodbye");
                yield false;
            }
            default -> answer(verb, "250 ok");
            };
        }

        private String offers() {
            return "250-localhost\n" + (security == Security.STARTTLS && !(socket instanceof SSLSocket)
                    ? "250-STARTTLS\n"
                    : "") + "250-AUTH PLAIN LOGIN\n250-CHUNKING\n250 8BITMIME";
        }

        private boolean content() throws IOException {
            if (script.containsKey("CONTENT")) {
                in.readNBytes(SMALL_BUFFER);
                return answer("CONTENT", "");
            }
            StringBuilder mail = new StringBuilder();
            for (String line = line(); !".".equals(line); line = line()) {
                if (line == null) {
                    return false;
                }
                mail.append(line.startsWith(".") ? line.substring(1) : line).append("\r\n");
            }
            if (code("END", "250").equals("250")) {
                taken.add(mail.toString());
            }
            return answer("END", "250 queued as 42");
        }

        boolean encrypt() throws IOException {
            if (script.getOrDefault("HANDSHAKE", "").equals("drop")) {
                return false;
            }
            SSLSocket encrypted = (SSLSocket) Objects.requireNonNull(tls).getSocketFactory()
                    .createSocket(socket, null, true);
            encrypted.setUseClientMode(false);
            encrypted.startHandshake();
            socket = encrypted;
            in = new BufferedInputStream(encrypted.getInputStream());
            out = encrypted.getOutputStream();
            return true;
        }

        private String code(String step, String usual) {
            return script.getOrDefault(step, usual).substring(0, 3);
        }

        /** Whether the connection goes on. */
        boolean answer(String step, String usual) throws IOException {
            String words = script.getOrDefault(step, usual);
            if (words.equals("silent")) {
                in.transferTo(OutputStream.nullOutputStream());
            }
            if (words.equals("deaf")) {
                awaitEnd();
            }
            if (Set.of("silent", "deaf", "drop").contains(words)) {
                return false;
            }
            out.write((words.replace("\n", "\r\n") + "\r\n").getBytes(StandardCharsets.UTF_8));
            out.flush();
            return true;
        }

        private void awaitEnd() throws IOException {
            try {
                end.await();
            } catch (InterruptedException stopped) {
                throw new IOException(stopped);
            }
        }

        private @Nullable String line() throws IOException {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            int next = in.read();
            while (next >= 0 && next != '\n') {
                bytes.write(next);
                next = in.read();
            }
            String line = bytes.toString(StandardCharsets.ISO_8859_1);
            return next < 0 ? null : line.endsWith("\r") ? line.substring(0, line.length() - 1) : line;
        }
    }
}
