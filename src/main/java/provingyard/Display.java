package provingyard;

import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.StandardProtocolFamily;
import java.net.UnixDomainSocketAddress;
import java.nio.channels.SocketChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Whether a window can be opened here, asked before JavaFX is started, so that a machine without a display gets one
 * sentence and no trace.
 */
final class Display {

    /** The answer. */
    enum State {
        /** A window can be opened. */
        READY,
        /** There is no display. */
        NONE,
        /** A display is named but nothing answers there. */
        DEAD,
        /** The display is there but GTK 3, which JavaFX needs on Linux, is not. */
        NO_GTK
    }

    private static final Pattern X_DISPLAY = Pattern.compile("(?<host>[^:]*):(?<number>\\d+)(\\.\\d+)?");
    private static final int X_PORT = 6000;
    private static final int PATIENCE_MS = 2000;

    private Display() {}

    /** Looks at the machine. */
    static State look() {
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        if (!system.contains("linux")) {
            return State.READY;
        }
        String name = System.getenv("DISPLAY");
        if (name == null || name.isBlank()) {
            return State.NONE;
        }
        if (!answers(name)) {
            return State.DEAD;
        }
        return hasGtk() ? State.READY : State.NO_GTK;
    }

    private static boolean answers(String name) {
        Matcher display = X_DISPLAY.matcher(name);
        if (!display.matches()) {
            return false;
        }
        int number = Integer.parseInt(display.group("number"));
        String host = display.group("host");
        return host.isEmpty() || host.equals("unix") ? answersLocally(number) : answersAt(host, X_PORT + number);
    }

    private static boolean answersLocally(int number) {
        Path socket = Path.of("/tmp", ".X11-unix", "X" + number);
        try (SocketChannel channel = SocketChannel.open(StandardProtocolFamily.UNIX)) {
            if (Files.exists(socket) && channel.connect(UnixDomainSocketAddress.of(socket))) {
                return true;
            }
        } catch (IOException e) {
            // Not there by this way; some servers listen on the port only.
        }
        return answersAt("localhost", X_PORT + number);
    }

    private static boolean answersAt(String host, int port) {
        try (Socket socket = new Socket()) {
            socket.connect(new InetSocketAddress(host, port), PATIENCE_MS);
            return true;
        } catch (IOException e) {
            return false;
        }
    }

    private static boolean hasGtk() {
        List<String> folders = new ArrayList<>(List.of("/usr/lib", "/usr/lib64", "/lib", "/lib64", "/usr/local/lib"));
        String arch = System.getProperty("os.arch", "");
        String triplet = arch.equals("aarch64") ? "aarch64-linux-gnu" : "x86_64-linux-gnu";
        folders.add("/usr/lib/" + triplet);
        folders.add("/lib/" + triplet);
        String path = System.getenv("LD_LIBRARY_PATH");
        if (path != null) {
            folders.addAll(List.of(path.split(":")));
        }
        return folders.stream().anyMatch(f -> Files.exists(Path.of(f, "libgtk-3.so.0")));
    }
}
