package icequill.render.pdf;

/**
 * A style sheet in two parts, which may be read apart.
 *
 * @param pages its rules of pages
 * @param elements its other rules
 */
record StyleText(String pages, String elements) {

    private static final String PAGE = "@page";

    static StyleText of(String text) {
        StringBuilder pages = new StringBuilder();
        StringBuilder elements = new StringBuilder();
        int from = 0;
        while (from < text.length()) {
            int end = endOfRule(text, from);
            String rule = text.substring(from, end);
            (rule.stripLeading().startsWith(PAGE) ? pages : elements).append(rule);
            from = end;
        }
        return new StyleText(pages.toString(), elements.toString());
    }

    /** Where the braces that begin after a place are closed; braces within quotes or remarks do not count. */
    private static int endOfRule(String text, int from) {
        int open = 0;
        for (int at = from; at < text.length(); at++) {
            switch (text.charAt(at)) {
            case '"', '\'' -> at = endOfQuotes(text, at);
            case '/' -> at = text.startsWith("/*", at) ? endOfRemark(text, at) : at;
            case '{' -> open++;
            case '}' -> {
                open--;
                if (open == 0) {
                    return at + 1;
                }
            }
            default -> {
            }
            }
        }
        return text.length();
    }

    private static int endOfQuotes(String text, int from) {
        int at = from + 1;
        while (at < text.length() && text.charAt(at) != text.charAt(from)) {
            at += text.charAt(at) == '\\' ? 2 : 1;
        }
        return at;
    }

    private static int endOfRemark(String text, int from) {
        int end = text.indexOf("*/", from);
        return end < 0 ? text.length() : end + 1;
    }
}
