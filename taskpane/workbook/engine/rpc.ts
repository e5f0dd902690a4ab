export {
  ChannelService,
  DataSyncPrimaryController,
  DataSyncReplicaController,
  IRemoteInstanceService,
  IRemoteSyncService,
  IRPCChannelService,
  RemoteSyncPrimaryService,
  WebWorkerRemoteInstanceService,
} from '@univerjs/rpc';
