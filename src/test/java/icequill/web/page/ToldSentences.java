package icequill.web.page;

import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ConditionalExpressionTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreeScanner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.jspecify.annotations.Nullable;

/** The sentences that the program's sources tell problems with, {0} and so on where something varies. */
final class ToldSentences extends TreeScanner<@Nullable Void, String> {

    private static final String VARIES = "\u0001";
    private static final int MESSAGE = 2;
    private static final int PARTS = 4;

    private final Map<String, String> classes = new TreeMap<>();
    private final List<String> texts = new ArrayList<>();
    private final Deque<String> within = new ArrayDeque<>();

    static ToldSentences read() throws IOException {
        ToldSentences told = new ToldSentences();
        JavaCompiler compiler = Objects.requireNonNull(ToolProvider.getSystemJavaCompiler());
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, null);
                Stream<Path> files = Files.walk(Path.of("src/main/java/icequill"))) {
            List<Path> sources = files.filter(file -> file.toString().endsWith(".java")).sorted().toList();
            JavacTask task = (JavacTask) compiler.getTask(null, manager, null, List.of("-proc:none"), null,
                    manager.getJavaFileObjectsFromPaths(sources));
            for (CompilationUnitTree unit : task.parse()) {
                told.scan(unit, String.valueOf(unit.getPackageName()).replaceFirst("^icequill[.]?", ""));
            }
        }
        return told;
    }

    /** The class that tells each of them, with its room. */
    Map<String, String> classes() {
        return Map.copyOf(classes);
    }

    /** All texts that stand in the sources. */
    List<String> texts() {
        return List.copyOf(texts);
    }

    @Override
    public @Nullable Void visitClass(ClassTree type, String room) {
        within.push(type.getSimpleName().isEmpty() && !within.isEmpty()
                ? within.element()
                : type.getSimpleName().toString());
        super.visitClass(type, room);
        within.pop();
        return null;
    }

    @Override
    public @Nullable Void visitNewClass(NewClassTree made, String room) {
        if (made.getIdentifier().toString().equals("Problem")) {
            told(made.getArguments(), room);
        }
        return super.visitNewClass(made, room);
    }

    @Override
    public @Nullable Void visitMethodInvocation(MethodInvocationTree call, String room) {
        if (call.getMethodSelect().toString().endsWith(".add")) {
            told(call.getArguments(), room);
        }
        return super.visitMethodInvocation(call, room);
    }

    @Override
    public @Nullable Void visitBinary(BinaryTree sum, String room) {
        sentences(sum).forEach(texts::add);
        return super.visitBinary(sum, room);
    }

    @Override
    public @Nullable Void visitLiteral(LiteralTree literal, String room) {
        texts.add(String.valueOf(literal.getValue()));
        return null;
    }

    private void told(List<? extends ExpressionTree> parts, String room) {
        if (parts.size() == PARTS) {
            parts.subList(MESSAGE, PARTS).stream().flatMap(part -> sentences(part).stream())
                    .forEach(sentence -> classes.put(numbered(sentence), room + "." + within.element()));
        }
    }

    private static List<String> sentences(ExpressionTree part) {
        return switch (part) {
        case LiteralTree literal -> List.of(String.valueOf(literal.getValue()));
        case ParenthesizedTree inner -> sentences(inner.getExpression());
        case ConditionalExpressionTree either -> Stream.of(either.getTrueExpression(), either.getFalseExpression())
                .flatMap(one -> sentences(one).stream()).toList();
        case BinaryTree sum when sum.getKind() == Tree.Kind.PLUS -> sentences(sum.getLeftOperand()).stream()
                .flatMap(left -> sentences(sum.getRightOperand()).stream().map(left::concat)).toList();
        default -> List.of(VARIES);
        };
    }

    private static String numbered(String sentence) {
        StringBuilder numbered = new StringBuilder();
        int places = 0;
        for (String part : sentence.replaceAll(VARIES + "+", VARIES).splitWithDelimiters(VARIES, 0)) {
            numbered.append(part.equals(VARIES) ? "{" + places++ + "}" : part);
        }
        return numbered.toString();
    }
}
