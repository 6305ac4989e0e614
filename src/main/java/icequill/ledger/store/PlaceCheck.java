package icequill.ledger.store;

import icequill.files.disk.Folder;
import icequill.problem.Code;
import icequill.problem.Discretion;
import icequill.problem.Place;
import icequill.problem.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Whether a book can be kept at a place. */
public final class PlaceCheck {

    /** File systems of other machines, on which SQLite's locks cannot be relied upon (sqlite.org, "How To Corrupt"). */
    private static final Set<String> NETWORK = Set.of("nfs", "nfs4", "cifs", "smb", "smb2", "smb3", "smbfs", "afpfs",
            "webdav", "davfs", "fuse.sshfs", "sshfs", "fuse.rclone", "9p", "ceph", "afs", "glusterfs",
            "fuse.glusterfs");

    private PlaceCheck() {
    }

    /** Why no book can be kept at a place; its folder is made. */
    public static Optional<Problem> unsuitable(BookPlace place) throws IOException {
        return switch (place) {
        case BookPlace.InFile(Path database, Path papers) ->
            remote(database, Files.getFileStore(Folder.madeFor(database)).type());
        case BookPlace.OnServer(String url, Path papers) -> Discretion.isPlainAddress(url)
                ? Optional.empty()
                : Optional.of(new Problem(Code.NOT_ALLOWED, Place.ofFile(place.text()),
                        "the address of the database cannot be read",
                        "jdbc:postgresql://host/name, and behind a ? what belongs to it, as user=name&ssl=true"));
        };
    }

    /** A problem when a kind of file system is that of another machine. */
    public static Optional<Problem> remote(Path database, String kind) {
        return NETWORK.contains(kind.toLowerCase(Locale.ROOT))
                ? Optional.of(new Problem(Code.NOT_ALLOWED, Place.ofFile(database.toString()),
                        "the folder is on a network drive (" + kind + "), where a book that is a file would be damaged",
                        "a folder on a disk of this machine, or a book on a PostgreSQL server"))
                : Optional.empty();
    }
}
