package wainbook.house;

import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** Stands between a browser and the app, so that their connections can be cut as when the app is started again. */
public final class Relay implements Closeable {

    private final URI app;
    private final ServerSocket door;
    private final Set<Socket> open = ConcurrentHashMap.newKeySet();
    private volatile boolean cut;

    public Relay(URI app) {
        this.app = app;
        try {
            this.door = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        start("relay", this::letIn);
    }

    public String address() {
        return "http://localhost:" + door.getLocalPort();
    }

    /** Every connection breaks, and none comes through until {@link #mend}. */
    public void cut() {
        cut = true;
        open.forEach(Relay::close);
    }

    public void mend() {
        cut = false;
    }

    private void letIn() {
        while (!door.isClosed()) {
            try {
                Socket browser = door.accept();
                if (cut) {
                    browser.close();
                } else {
                    join(browser, new Socket(app.getHost(), app.getPort()));
                }
            } catch (IOException closed) {
                // The door is closed, or one connection failed: the next one is another matter.
            }
        }
    }

    private void join(Socket browser, Socket server) {
        open.add(browser);
        open.add(server);
        start("relay to app", () -> copy(browser, server));
        start("relay to browser", () -> copy(server, browser));
    }

    private void copy(Socket from, Socket to) {
        try {
            from.getInputStream().transferTo(to.getOutputStream());
        } catch (IOException broken) {
            // Whoever broke it wants it so.
        } finally {
            close(from);
            close(to);
            open.remove(from);
            open.remove(to);
        }
    }

    private static void start(String name, Runnable work) {
        var thread = new Thread(work, name);
        thread.setDaemon(true);
        thread.start();
    }

    private static void close(Socket socket) {
        try {
            socket.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        cut();
        try {
            door.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
