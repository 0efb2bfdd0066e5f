package org.brakewright.app.web;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.staticfiles.Location;
import io.javalin.util.JavalinBindException;
import java.net.InetAddress;
import java.util.concurrent.CountDownLatch;
import org.brakewright.app.workspace.Workspace;

/** Serves the page and its data on the loopback address of this machine only. */
public final class PageServer implements AutoCloseable {
    private static final String LOOPBACK = InetAddress.getLoopbackAddress().getHostAddress();
    private static final int LARGEST_REQUEST = 1 << 20;

    private final Javalin server;
    private final CountDownLatch stopped = new CountDownLatch(1);

    private PageServer(Javalin server) {
        this.server = server;
    }

    /** The port asked for is in use. */
    public static final class PortTaken extends RuntimeException {
        private static final long serialVersionUID = 1;

        PortTaken(Throwable cause) {
            super(cause);
        }
    }

    /**
     * Starts serving a workspace.
     *
     * @param demo whether the page says that this is a demo car
     * @param port 0 for any free one
     * @throws PortTaken when the port is in use
     */
    public static PageServer start(Workspace workspace, boolean demo, int port) {
        Guard guard = new Guard();
        PageHandlers handlers = new PageHandlers(workspace, demo);
        SpreadHandler spreads = new SpreadHandler(workspace);
        SheetHandler sheets = new SheetHandler(workspace);
        Javalin server = Javalin.create(config -> {
            configure(config, guard, handlers);
            config.routes.get("/api/spread", spreads::spread);
            config.routes.get("/api/stops", new StopHandler(workspace)::stops);
            config.routes.get("/api/scene", new SceneHandler(workspace)::scene);
            config.routes.get("/api/sheets", sheets::list);
            config.routes.get("/sheets/{file}", sheets::file);
        });
        try {
            server.start(LOOPBACK, port);
        } catch (JavalinBindException taken) {
            throw new PortTaken(taken);
        }
        guard.servesOn(server.port());
        Runtime.getRuntime().addShutdownHook(new Thread(server::stop));
        return new PageServer(server);
    }

    private static void configure(JavalinConfig config, Guard guard, PageHandlers handlers) {
        config.startup.showJavalinBanner = false;
        config.http.maxRequestSize = LARGEST_REQUEST;
        config.staticFiles.add("/org/brakewright/page", Location.CLASSPATH);
        config.routes.before(guard::check);
        config.routes.get("/api/page", handlers::page);
        config.routes.post("/api/edit", handlers::edit);
        config.routes.post("/api/undo", handlers::undo);
        config.routes.post("/api/redo", handlers::redo);
        config.routes.exception(Exception.class, handlers::unexpected);
    }

    /** Address of the page. */
    public String address() {
        return "http://" + LOOPBACK + ":" + server.port() + "/";
    }

    /** Waits until the server is closed. */
    public void join() throws InterruptedException {
        stopped.await();
    }

    @Override
    public void close() {
        server.stop();
        stopped.countDown();
    }
}
