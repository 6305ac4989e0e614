package icequill.ledger.store;

import java.net.InetAddress;
import java.net.UnknownHostException;

/** Who writes in a book: a process and its machine. */
public record Holder(long process, String host) {

    static Holder self() {
        return new Holder(ProcessHandle.current().pid(), hostName());
    }

    /** {@code process 4711 on front-desk}. */
    String text() {
        return "process " + process + " on " + host;
    }

    private static String hostName() {
        try {
            return InetAddress.getLocalHost().getHostName();
        } catch (UnknownHostException nameless) {
            return "this machine";
        }
    }
}
