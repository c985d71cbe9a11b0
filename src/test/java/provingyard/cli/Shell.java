package provingyard.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/** One command as a person types it, and what came of it. */
record Shell(int code, String out, String err) {

    static Shell type(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Main.execute(new PrintWriter(out), new PrintWriter(err), args);
        return new Shell(code, out.toString(), err.toString());
    }

    /** Everything a person saw. */
    String seen() {
        return out + err;
    }
}
