package coldwright.source;

import coldwright.source.JavaToken.Kind;

import java.util.ArrayList;
import java.util.List;

/**
 * Splits Java text into tokens, which together are the whole text. It accepts any text: an
 * unfinished string or character ends with its line, an unfinished text block or comment with the
 * text. It differs from Java in three points: a number includes the letters and dots after it
 * ({@code 5g} is one token), {@code >>} is two tokens as in {@code List<List<Mix>>}, and Unicode
 * escapes are not decoded.
 */
final class JavaLexer {
    private static final String BLOCK_QUOTES = "\"\"\"";

    /** Operators of more than one character, longer ones before their prefixes. */
    private static final List<String> OPERATORS =
            List.of(
                    ">>>=", ">>=", "<<=", "...", "->", "::", "++", "--", "&&", "||", "==", "!=",
                    "<=", ">=", "+=", "-=", "*=", "/=", "%=", "&=", "|=", "^=", "<<");

    private final String java;
    private final List<JavaToken> tokens = new ArrayList<>();
    private int at;

    private JavaLexer(String java) {
        this.java = java;
    }

    static List<JavaToken> tokens(String java) {
        JavaLexer lexer = new JavaLexer(java);
        while (lexer.at < java.length()) {
            int start = lexer.at;
            Kind kind = lexer.next();
            lexer.tokens.add(new JavaToken(kind, start, lexer.at));
        }
        return List.copyOf(lexer.tokens);
    }

    /** Advances past the next token. */
    private Kind next() {
        int c = java.codePointAt(at);
        if (Character.isWhitespace(c)) {
            while (at < java.length() && Character.isWhitespace(java.charAt(at))) {
                at++;
            }
            return Kind.WHITESPACE;
        } else if (java.startsWith("//", at)) {
            while (at < java.length() && !isLineEnd(at)) {
                at++;
            }
            return Kind.LINE_COMMENT;
        } else if (java.startsWith("/*", at)) {
            int close = java.indexOf("*/", at + 2);
            at = close < 0 ? java.length() : close + 2;
            return Kind.BLOCK_COMMENT;
        } else if (java.startsWith(BLOCK_QUOTES, at)) {
            quoted(BLOCK_QUOTES);
            return Kind.TEXT_BLOCK;
        } else if (c == '"' || c == '\'') {
            quoted(Character.toString(c));
            return c == '"' ? Kind.STRING : Kind.CHARACTER;
        } else if (isDigit(at) || c == '.' && isDigit(at + 1)) {
            number();
            return Kind.NUMBER;
        } else if (Character.isJavaIdentifierStart(c)) {
            do {
                at += Character.charCount(java.codePointAt(at));
            } while (at < java.length() && Character.isJavaIdentifierPart(java.codePointAt(at)));
            return Kind.WORD;
        }
        return symbol(c);
    }

    private void quoted(String mark) {
        boolean oneLine = mark.length() == 1;
        at += mark.length();
        while (at < java.length() && !java.startsWith(mark, at)) {
            if (oneLine && isLineEnd(at)) {
                return;
            }
            boolean escape = java.charAt(at) == '\\' && !(oneLine && isLineEnd(at + 1));
            at += escape ? 2 : 1;
        }
        at = Math.min(at + mark.length(), java.length());
    }

    private void number() {
        boolean hexadecimal = java.startsWith("0x", at) || java.startsWith("0X", at);
        String exponents = hexadecimal ? "pP" : "eE";
        int start = at;
        while (at < java.length()) {
            char c = java.charAt(at);
            boolean exponentSign =
                    (c == '+' || c == '-')
                            && at > start
                            && exponents.indexOf(java.charAt(at - 1)) >= 0;
            if (!(Character.isLetterOrDigit(c) || c == '_' || c == '.' || exponentSign)) {
                return;
            }
            at++;
        }
    }

    private Kind symbol(int c) {
        for (String one : OPERATORS) {
            if (java.startsWith(one, at)) {
                at += one.length();
                return Kind.OPERATOR;
            }
        }
        at += Character.charCount(c);
        return "([{".indexOf(c) >= 0
                ? Kind.OPEN
                : ")]}".indexOf(c) >= 0 ? Kind.CLOSE : Kind.OPERATOR;
    }

    private boolean isLineEnd(int index) {
        return index < java.length() && (java.charAt(index) == '\n' || java.charAt(index) == '\r');
    }

    private boolean isDigit(int index) {
        return index < java.length() && java.charAt(index) >= '0' && java.charAt(index) <= '9';
    }
}
