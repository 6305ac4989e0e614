package icequill.cli.terminal;

import icequill.request.Extras;
import picocli.CommandLine.Option;

/** The options that every command shares that writes a paper. */
public final class CopyOptions {

    @Option(names = "--html", description = "Write the same paper as HTML beside the PDF.")
    private boolean html;

    @Option(names = "--bare", description = "Put no data files into the PDF. Some mail gateways hold back PDFs that carry files.")
    private boolean bare;

    /**
     * What was asked for.
     *
     * @param xml whether the paper is to be written as UBL too
     */
    public Extras extras(boolean xml) {
        return extras(xml, false);
    }

    /** The same, and whether a mail about it is to be written. */
    public Extras extras(boolean xml, boolean mail) {
        return new Extras(html, xml, bare, mail);
    }
}
