import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.stream.Stream;

/**
 * Builds the self-contained program: a trimmed Java runtime, the jars, the launcher, and a class cache for a fast start.
 * Run by the build as a single source file with the JDK that compiled. It starts afresh, so a second build finds nothing in
 * its way; what was made of the same parts by the same JDK is left as it is.
 */
public final class MakeImage {

    /** Flying Saucer needs jdk.xml.dom, which nothing else pulls in; locales of other languages are left out. */
    private static final String MODULES = "java.se,jdk.xml.dom,jdk.unsupported,jdk.localedata,jdk.charsets,jdk.zipfs,jdk.crypto.ec";

    /** Writing the cache at exit came with Java 25. */
    private static final int CACHE_SINCE = 25;

    private MakeImage() {
    }

    public static void main(String[] args) throws Exception {
        Path project = Path.of(args[0]);
        Path jar = Path.of(args[1]);
        Path image = Path.of(args[2]);
        Path demo = Path.of(args[3]);
        FileTime time = FileTime.from(Instant.parse(args[4]));
        List<Path> libraries = Stream.of(args[5].split(File.pathSeparator)).map(Path::of).filter(Files::isRegularFile)
                .toList();
        Path mark = image.resolveSibling(image.getFileName() + ".parts");
        String parts = parts(project, jar, libraries, args[4]);
        if (Files.exists(mark) && Files.readString(mark).equals(parts)) {
            say("nothing changed since it was made");
            return;
        }
        Files.deleteIfExists(mark);
        delete(image);
        say("a Java runtime of its own");
        run(List.of(Path.of(System.getProperty("java.home"), "bin", "jlink").toString(), "--add-modules", MODULES,
                "--include-locales=en,es", "--strip-debug", "--no-header-files", "--no-man-pages", "--output",
                image.resolve("runtime").toString()));
        Path lib = Files.createDirectories(image.resolve("lib"));
        addJar(jar, lib, time);
        for (Path library : libraries) {
            addJar(library, lib, time);
        }
        copy(project.resolve("src/main/dist"), image);
        collectLicences(lib, image.resolve("legal"));
        Files.copy(project.resolve("LICENSE"), image.resolve("LICENSE"), StandardCopyOption.REPLACE_EXISTING);
        Path launcher = image.resolve("bin/icequill");
        if (!launcher.toFile().setExecutable(true)) {
            throw new IOException("cannot make " + launcher + " executable");
        }
        say("a first run, so that later ones start fast");
        train(image, launcher, demo);
        Files.writeString(mark, parts);
        say("all of it is in " + project.relativize(image));
    }

    /** All that it is made of, as hashes. */
    private static String parts(Path project, Path jar, List<Path> libraries, String time)
            throws IOException, GeneralSecurityException {
        List<Path> files = new ArrayList<>(libraries);
        files.addAll(List.of(jar, project.resolve("LICENSE"), project.resolve("src/build/MakeImage.java")));
        try (Stream<Path> more = Files.walk(project.resolve("src/main/dist"))) {
            more.filter(Files::isRegularFile).sorted().forEach(files::add);
        }
        StringBuilder parts = new StringBuilder(
                Runtime.version() + " " + System.getProperty("java.home") + " " + time + "\n");
        for (Path file : files) {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
            parts.append(file).append(' ').append(HexFormat.of().formatHex(hash)).append('\n');
        }
        return parts.toString();
    }

    private static void say(String step) {
        System.out.println("Making the program: " + step);
    }

    /**
     * One real run that touches what every run needs; the classes it loads are kept ready in a cache file, where Java can. Its demo stays
     * for the tests of the image.
     */
    private static void train(Path image, Path launcher, Path demo) throws IOException, InterruptedException {
        delete(demo);
        ProcessBuilder builder = new ProcessBuilder(launcher.toString(), "demo", demo.toString());
        if (Runtime.version().feature() >= CACHE_SINCE) {
            builder.environment().put("ICEQUILL_JAVA", "-XX:AOTCacheOutput=" + image.resolve("lib/icequill.aot"));
        }
        run(builder);
    }

    /**
     * The cache fits only while each jar has the size and time that it had in training. A whole even number of seconds is
     * kept by every way of packing and unpacking the image.
     */
    private static void addJar(Path jar, Path lib, FileTime time) throws IOException {
        Files.setLastModifiedTime(Files.copy(jar, lib.resolve(jar.getFileName())), time);
    }

    /** The licences and notices that the libraries carry, each set under the name of its jar. */
    private static void collectLicences(Path jars, Path legal) throws IOException {
        try (Stream<Path> files = Files.list(jars)) {
            for (Path jar : files.filter(file -> file.toString().endsWith(".jar")).sorted().toList()) {
                try (JarFile content = new JarFile(jar.toFile())) {
                    for (JarEntry entry : content.stream().filter(MakeImage::isLicence).toList()) {
                        String name = entry.getName().substring(entry.getName().lastIndexOf('/') + 1);
                        Path target = legal.resolve(jar.getFileName().toString().replace(".jar", "")).resolve(name);
                        Files.createDirectories(target.getParent());
                        Files.copy(content.getInputStream(entry), target, StandardCopyOption.REPLACE_EXISTING);
                    }
                }
            }
        }
    }

    private static boolean isLicence(JarEntry entry) {
        return !entry.isDirectory() && !entry.getName().endsWith(".class")
                && entry.getName().matches("(?i)(META-INF/|liberation/|net/sf/jasperreports/fonts/dejavu/|fonts/ttf/[^/]+/|icequill/fonts/)?[^/]*(licen[cs]e|notice|copying|OFL[.]txt)[^/]*");
    }

    private static void run(List<String> command) throws IOException, InterruptedException {
        run(new ProcessBuilder(command));
    }

    private static void run(ProcessBuilder builder) throws IOException, InterruptedException {
        Path log = Files.createTempFile("icequill-build", ".log");
        int status = builder.redirectErrorStream(true).redirectOutput(log.toFile()).start().waitFor();
        if (status != 0) {
            throw new IOException(builder.command() + " ended with " + status + ":\n" + Files.readString(log));
        }
        Files.delete(log);
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Path target = to.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(file, target, StandardCopyOption.REPLACE_EXISTING);
                }
            }
        }
    }

    private static void delete(Path folder) throws IOException {
        if (Files.exists(folder)) {
            List<Path> deepestFirst = new ArrayList<>();
            try (Stream<Path> files = Files.walk(folder)) {
                files.sorted(Comparator.reverseOrder()).forEach(deepestFirst::add);
            }
            for (Path file : deepestFirst) {
                Files.delete(file);
            }
        }
    }
}
