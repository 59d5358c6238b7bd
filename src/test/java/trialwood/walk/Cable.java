package trialwood.walk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** The way from a phone to the application; it can be cut, and mended at the same place. */
class Cable implements AutoCloseable {

  private final int far;
  private final Set<Socket> ends = ConcurrentHashMap.newKeySet();
  private ServerSocket near;

  /**
   * @param far the application's port
   */
  Cable(int far) throws IOException {
    this.far = far;
    this.near = listen(0);
  }

  /** Where the phone finds the application. */
  int port() {
    return near.getLocalPort();
  }

  void cut() throws IOException {
    near.close();
    for (Socket end : ends) {
      end.close();
    }
    ends.clear();
  }

  void mend() throws IOException {
    near = listen(port());
  }

  private ServerSocket listen(int port) throws IOException {
    ServerSocket door = new ServerSocket();
    door.setReuseAddress(true);
    door.bind(new InetSocketAddress(InetAddress.getLoopbackAddress(), port));
    start(() -> accept(door));
    return door;
  }

  private void accept(ServerSocket door) {
    while (!door.isClosed()) {
      try {
        Socket phone = door.accept();
        Socket application = new Socket(InetAddress.getLoopbackAddress(), far);
        ends.add(phone);
        ends.add(application);
        start(() -> carry(phone, application));
        start(() -> carry(application, phone));
      } catch (IOException cut) {
        continue;
      }
    }
  }

  private static void carry(Socket from, Socket to) {
    try (from;
        to) {
      from.getInputStream().transferTo(to.getOutputStream());
    } catch (IOException cut) {
      return;
    }
  }

  private static void start(Runnable work) {
    Thread thread = new Thread(work, "cable");
    thread.setDaemon(true);
    thread.start();
  }

  @Override
  public void close() {
    try {
      cut();
    } catch (IOException unclosed) {
      throw new UncheckedIOException(unclosed);
    }
  }
}
