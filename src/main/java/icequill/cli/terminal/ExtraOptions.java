package icequill.cli.terminal;

import icequill.request.Extras;
import picocli.CommandLine.Option;

/** The options that every command shares that writes a paper. */
public final class ExtraOptions {

    @Option(names = "--html", description = "Write the same paper as HTML beside the PDF.")
    private boolean html;

    @Option(names = "--xml", description = "Write an invoice, credit note or quote as UBL 2.1 beside the PDF.")
    private boolean xml;

    @Option(names = "--bare", description = "Put no data files into the PDF. Some mail gateways hold back PDFs that carry files.")
    private boolean bare;

    public Extras extras() {
        return new Extras(html, xml, bare);
    }
}
