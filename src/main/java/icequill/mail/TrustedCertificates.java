package icequill.mail;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.cert.Certificate;
import java.security.cert.CertificateFactory;
import java.util.Collection;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLSocketFactory;
import javax.net.ssl.TrustManagerFactory;

/** Connections that only the certificates of one file vouch for. */
final class TrustedCertificates {

    private static final long MOST_BYTES = 1_000_000;

    private TrustedCertificates() {
    }

    /** Reads one or more certificates in PEM form. */
    static Validated<SSLSocketFactory> of(Path file) {
        try {
            if (!Files.isRegularFile(file) || Files.size(file) > MOST_BYTES) {
                return unreadable(file);
            }
            Collection<? extends Certificate> read;
            try (InputStream in = Files.newInputStream(file)) {
                read = CertificateFactory.getInstance("X.509").generateCertificates(in);
            }
            return read.isEmpty() ? unreadable(file) : Validated.valid(factory(read));
        } catch (IOException | GeneralSecurityException none) {
            return unreadable(file);
        }
    }

    private static SSLSocketFactory factory(Collection<? extends Certificate> certificates)
            throws IOException, GeneralSecurityException {
        KeyStore store = KeyStore.getInstance(KeyStore.getDefaultType());
        store.load(null, null);
        for (Certificate certificate : certificates) {
            store.setCertificateEntry("trusted" + store.size(), certificate);
        }
        TrustManagerFactory trust = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        trust.init(store);
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(null, trust.getTrustManagers(), null);
        return context.getSocketFactory();
    }

    private static <T> Validated<T> unreadable(Path file) {
        return Validated.invalid(new Problem(Code.UNREADABLE, Place.ofFile(file.toString()),
                "the certificates that vouch for the mail server cannot be read",
                "a file with certificates in PEM form, that you may read"));
    }
}
