package padside.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.ReadableByteChannel;
import java.nio.channels.WritableByteChannel;
import java.nio.file.Path;

/** A medium whose journals fail as told. */
final class FailingMedium extends Medium {
  /** How a write goes wrong. */
  enum Failure {
    /** No byte is written. */
    WRITE,
    /** Half the bytes are written, then no more. */
    SHORT_WRITE,
    /** All is written but never acknowledged. */
    FORCE
  }

  private Failure failure = Failure.WRITE;
  private int left;
  private boolean keeps;
  private boolean halfWritten;
  private long room = Long.MAX_VALUE;

  /** The next so many tries fail. */
  void fail(Failure how, int times) {
    failure = how;
    left = times;
  }

  /** What was written before a failure cannot be cut off again. */
  void keepWhatFailed() {
    keeps = true;
  }

  /** So many bytes can still be written, it says. */
  void leaveRoom(long bytes) {
    room = bytes;
  }

  @Override
  long room(Path folder) {
    return room;
  }

  private void failAt(Failure here) throws IOException {
    if (failure == here && left > 0) {
      left--;
      throw new IOException("No space left on device");
    }
  }

  @Override
  FileChannel fresh(Path file) throws IOException {
    return new Failing(super.fresh(file));
  }

  private final class Failing extends FileChannel {
    private final FileChannel file;

    Failing(FileChannel file) {
      this.file = file;
    }

    @Override
    public int write(ByteBuffer bytes, long at) throws IOException {
      failAt(Failure.WRITE);
      if (failure == Failure.SHORT_WRITE && left > 0 && !halfWritten) {
        halfWritten = true;
        ByteBuffer half = bytes.slice(bytes.position(), bytes.remaining() / 2);
        int written = file.write(half, at);
        bytes.position(bytes.position() + written);
        return written;
      }
      halfWritten = false;
      failAt(Failure.SHORT_WRITE);
      return file.write(bytes, at);
    }

    @Override
    public void force(boolean metaData) throws IOException {
      failAt(Failure.FORCE);
      file.force(metaData);
    }

    @Override
    public FileChannel truncate(long size) throws IOException {
      if (keeps) {
        throw new IOException("Input/output error");
      }
      file.truncate(size);
      return this;
    }

    @Override
    protected void implCloseChannel() throws IOException {
      file.close();
    }

    @Override
    public int read(ByteBuffer bytes) {
      throw new UnsupportedOperationException();
    }

    @Override
    public long read(ByteBuffer[] bytes, int offset, int length) {
      throw new UnsupportedOperationException();
    }

    @Override
    public int write(ByteBuffer bytes) {
      throw new UnsupportedOperationException();
    }

    @Override
    public long write(ByteBuffer[] bytes, int offset, int length) {
      throw new UnsupportedOperationException();
    }

    @Override
    public long position() throws IOException {
      return file.position();
    }

    @Override
    public FileChannel position(long at) throws IOException {
      file.position(at);
      return this;
    }

    @Override
    public long size() throws IOException {
      return file.size();
    }

    @Override
    public long transferTo(long position, long count, WritableByteChannel target) {
      throw new UnsupportedOperationException();
    }

    @Override
    public long transferFrom(ReadableByteChannel source, long position, long count) {
      throw new UnsupportedOperationException();
    }

    @Override
    public int read(ByteBuffer bytes, long position) {
      throw new UnsupportedOperationException();
    }

    @Override
    public MappedByteBuffer map(MapMode mode, long position, long size) {
      throw new UnsupportedOperationException();
    }

    @Override
    public FileLock lock(long position, long size, boolean shared) {
      throw new UnsupportedOperationException();
    }

    @Override
    public FileLock tryLock(long position, long size, boolean shared) {
      throw new UnsupportedOperationException();
    }
  }
}
