package icequill.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import picocli.CommandLine.Help;
import picocli.CommandLine.IHelpSectionRenderer;

/** Lists the program's commands in the help, by what people want to do. */
final class CommandList implements IHelpSectionRenderer {

    /** Some commands under a heading. */
    private record Group(String heading, List<String> commands) {}

    private static final List<Group> GROUPS = List.of(
            new Group("To begin", List.of("demo", "new", "shop", "office", "today", "check")),
            new Group("To price and offer", List.of("price", "quote", "agreement", "compare", "brushing", "fit")),
            new Group("To work", List.of("call", "visit", "job", "claim", "refrigerant", "sale")),
            new Group("To bill", List.of("invoice", "credit", "payment", "mail")),
            new Group("To look things up", List.of("find", "show", "paper")),
            new Group("Who and where", List.of("customer", "contact", "site", "machine")),
            new Group("To keep the shop's book",
                    List.of("form", "import", "export", "rates", "audit", "backup", "restore")));

    @Override
    public String render(Help help) {
        if (help.commandSpec().parent() != null) {
            return help.commandList();
        }
        Map<String, Help> rest = new LinkedHashMap<>(help.subcommands());
        StringBuilder list = new StringBuilder();
        for (Group group : GROUPS) {
            Map<String, Help> commands = new LinkedHashMap<>();
            group.commands().forEach(name -> commands.put(name, Objects.requireNonNull(rest.remove(name), name)));
            list.append(System.lineSeparator()).append(group.heading()).append(System.lineSeparator())
                    .append(help.commandList(commands));
        }
        return list.append(System.lineSeparator()).append(help.commandList(rest)).toString();
    }
}
