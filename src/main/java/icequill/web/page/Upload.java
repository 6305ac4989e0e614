package icequill.web.page;

/** A file that was handed over. */
public final class Upload {

    private final String name;
    private final byte[] content;

    Upload(String name, byte[] content) {
        this.name = name;
        this.content = content.clone();
    }

    /** As the sender calls it, which may be anything. */
    public String name() {
        return name;
    }

    public byte[] content() {
        return content.clone();
    }
}
